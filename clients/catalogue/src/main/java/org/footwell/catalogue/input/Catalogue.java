package org.footwell.catalogue.input;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Row;

/** A catalogue, read row by row. */
public interface Catalogue extends Closeable {

  /** The next row, or null after the last one. */
  Row next() throws IOException, CannotRun;

  /** The names of its columns as the service is to know them; empty where rows name their own. */
  List<String> header();

  /** After the last row: what there is to know about what was read, in sentences. */
  List<String> notes();
}
