package org.footwell.web.batch;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.InputStream;
import org.footwell.calculation.Row;
import org.footwell.calculation.text.Phrase;
import org.footwell.web.request.ProblemWords;

/** The rows of a CSV, empty lines left out. */
final class CsvRows implements AutoCloseable {

  /**
   * A row that is put after the last: where it does not come back, a quote that is never closed has
   * swallowed it, and the rows before it. What a caller sends may hold the character too: only the last
   * row is looked at.
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
            .build(gatherer, new EndedReader(in, separator, "\n" + END))
            .iterator();
  }

  /** From a line on the CSV cannot be read. */
  static final class Broken extends Exception {
    private static final long serialVersionUID = 1L;

    private final long line;
    private final transient Phrase why;

    Broken(long line, Phrase why) {
      super(null, null, false, false);
      this.line = line;
      this.why = why;
    }

    /** In a sentence that says the line and why. */
    Phrase in(ProblemWords sentence) {
      return Phrase.of(sentence).with("line", line).with("why", why);
    }
  }

  /** What is said where a row cannot be read for this reason. */
  Broken brokenOff(Phrase why) {
    return new Broken(gatherer.line(), why);
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
      if (!cells.endsWith(END) || rows.hasNext()) {
        return row;
      }
      if (cells.size() == 1 && cells.text(0).length() == 1) {
        return null;
      }
      throw new Broken(row.line(), Phrase.of(ProblemWords.OPEN_QUOTE));
    } catch (CsvParseException failure) {
      if (failure.getCause() instanceof CsvParseException) {
        throw brokenOff(Phrase.of(ProblemWords.UNREADABLE_CSV).with("most", most));
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
