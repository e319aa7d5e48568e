package org.footwell.web.batch;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.InputStream;
import org.footwell.calculation.Row;

/** The rows of a CSV, empty lines left out. */
final class CsvRows implements AutoCloseable {

  /**
   * A row that is put after the last: where it does not come back, a quote that is never closed has
   * swallowed it, and the rows before it. The character is never part of a text.
   */
  private static final char END = '\uFFFF';

  private final int most;
  private final CsvGatherer gatherer;
  private final CloseableIterator<CsvRow> rows;

  /**
   * Begins to read.
   *
   * @param most characters a row may have
   */
  CsvRows(InputStream in, char separator, int most) throws IOException {
    this.most = most;
    this.gatherer = new CsvGatherer(separator, most);
    this.rows =
        CsvReader.builder()
            .fieldSeparator(separator)
            .skipEmptyLines(true)
            .allowMissingFields(true)
            .allowExtraFields(true)
            .maxBufferSize(Math.max(most, 1 << 16))
            .build(gatherer, new EndedReader(in, "\n" + END))
            .iterator();
  }

  /** From a line on the CSV cannot be read. */
  static final class Broken extends Exception {
    private static final long serialVersionUID = 1L;

    Broken(long line, String sentence) {
      super("line " + line + ": " + sentence);
    }
  }

  /**
   * The next row, or null after the last.
   *
   * @throws Broken where there is a next row that cannot be read
   */
  CsvRow next() throws Broken {
    try {
      CsvRow row = rows.next();
      Row cells = row.cells();
      if (!cells.endsWith(END)) {
        return row;
      }
      if (cells.size() == 1 && cells.text(0).length() == 1) {
        return null;
      }
      throw new Broken(row.line(), "a quote that opens in this row is never closed.");
    } catch (CsvParseException failure) {
      if (failure.getCause() instanceof CsvParseException) {
        throw new Broken(
            gatherer.line(),
            "the CSV cannot be read from here on; a row has more than "
                + most
                + " characters, or a cell goes on after its closing quote.");
      }
      // What went wrong while waiting for the caller is no matter of the CSV.
      throw failure.getCause() instanceof RuntimeException own ? own : failure;
    }
  }

  @Override
  public void close() throws IOException {
    rows.close();
  }
}
