package org.footwell.catalogue.input;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Pattern;

/** What stands before the decimals of a printed number. */
public enum Decimal {
  POINT('.'),
  COMMA(',');

  private static final int LONGEST_NUMBER = 40;

  private final char mark;
  private final Pattern number;

  Decimal(char mark) {
    this.mark = mark;
    String decimals = Pattern.quote(String.valueOf(mark));
    this.number =
        Pattern.compile(
            "-?([0-9]+" + decimals + "?[0-9]*|" + decimals + "[0-9]+)([eE][+-]?[0-9]{1,4})?");
  }

  /**
   * The number of a cell as catalogues print it, as the CSV of the service takes it too: .41, 5. and
   * 04 as well; null if it is none.
   */
  BigDecimal read(String cell) {
    return cell.length() <= LONGEST_NUMBER && number.matcher(cell).matches()
        ? new BigDecimal(cell.replace(mark, '.'))
        : null;
  }

  Decimal other() {
    return this == POINT ? COMMA : POINT;
  }

  /** Whether a cell is a number written in the other manner only. */
  boolean isForeign(String cell) {
    return read(cell) == null && other().read(cell) != null;
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
