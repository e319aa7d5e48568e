package org.footwell.calculation;

import java.util.regex.Pattern;

/** What may stand in a cell of CSV: a spreadsheet that opens it must not run it as a formula. */
public final class CsvCell {

  /** What makes a spreadsheet take a text for a formula, as the first character of a cell. */
  private static final String BEGIN_FORMULAS = "=+-@\t\r";

  /** With a point or a comma, as the sender's spreadsheet writes decimals. */
  private static final Pattern NUMBER =
      Pattern.compile("[+-](\\d+[.,]?\\d*|[.,]\\d+)([eE][+-]?\\d+)?");

  private CsvCell() {}

  /** The text with an apostrophe before it where it would begin a formula; numbers stay as they are. */
  public static String harmless(String text) {
    return !text.isEmpty() && mayBegin(text.charAt(0)) && !NUMBER.matcher(text).matches()
        ? "'" + text
        : text;
  }

  static boolean mayBegin(char first) {
    return BEGIN_FORMULAS.indexOf(first) >= 0;
  }
}
