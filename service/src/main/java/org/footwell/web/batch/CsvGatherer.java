package org.footwell.web.batch;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvParseException;
import java.util.Arrays;
import org.footwell.calculation.Row;

/** Gathers the cells of each row in one place: a text for every cell would cost more than to read. */
final class CsvGatherer extends AbstractBaseCsvCallbackHandler<CsvRow> {

  private final char separator;
  private final int most;
  private char[] characters = new char[1024];
  private int[] ends = new int[64];
  private int cells;
  private int length;
  private boolean quoted;

  /**
   * Gathers the rows of one batch.
   *
   * @param most characters a row may have
   */
  CsvGatherer(char separator, int most) {
    this.separator = separator;
    this.most = most;
  }

  /** The line in which the row begins that is being read. */
  long line() {
    return getStartingLineNumber();
  }

  @Override
  protected void handleBegin(long line) {
    cells = 0;
    length = 0;
    quoted = false;
  }

  @Override
  protected void handleField(int cell, char[] from, int offset, int count, boolean inQuotes) {
    if (length + count > most) {
      throw new CsvParseException("a row has more than " + most + " characters");
    }
    if (length + count >= characters.length) {
      characters = Arrays.copyOf(characters, 2 * (length + count));
    }
    System.arraycopy(from, offset, characters, length, count);
    length += count;
    if (cells == ends.length) {
      ends = Arrays.copyOf(ends, 2 * cells);
    }
    ends[cells++] = length;
    characters[length++] = separator;
    quoted |= inQuotes;
  }

  @Override
  protected CsvRow buildRecord() {
    return new CsvRow(
        new Row(Arrays.copyOf(characters, length), Arrays.copyOf(ends, cells)), quoted, line());
  }
}
