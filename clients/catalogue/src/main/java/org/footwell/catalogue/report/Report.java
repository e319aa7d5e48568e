package org.footwell.catalogue.report;

import java.io.Closeable;
import java.io.IOException;
import org.footwell.catalogue.row.CheckedRow;

/** What is told of a check. Closed without being finished, it leaves nothing behind. */
public interface Report extends Closeable {

  /** Takes the next row, in the order of the catalogue. */
  void add(CheckedRow row) throws IOException;

  /** Every row was added. */
  void finish(Tally tally) throws IOException;

  @Override
  default void close() throws IOException {}
}
