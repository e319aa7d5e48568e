package org.footwell.calculation;

/** What may stand in a cell of CSV: a spreadsheet that opens it must not run it as a formula. */
public final class CsvCell {

  private CsvCell() {}

  /** The text with an apostrophe before it where it would begin a formula; numbers stay as they are. */
  public static String harmless(String text) {
    return beginsFormula(text) ? "'" + text : text;
  }

  /** Whether a spreadsheet would take it for a formula; signed numbers are none. */
  static boolean beginsFormula(CharSequence text) {
    return !text.isEmpty() && canBeginFormula(text.charAt(0)) && !isSignedNumber(text);
  }

  /** Whether a spreadsheet takes a text for a formula that begins so. */
  static boolean canBeginFormula(char first) {
    return switch (first) {
      case '=', '+', '-', '@', '\t', '\r' -> true;
      default -> false;
    };
  }

  /**
   * A sign, digits with a point or a comma, as the sender's spreadsheet writes decimals, and an exponent. Read by hand,
   * since a batch asks of every negative number.
   */
  private static boolean isSignedNumber(CharSequence text) {
    if (!isSign(text, 0)) {
      return false;
    }
    int whole = afterDigits(text, 1);
    boolean marked = whole < text.length() && ".,".indexOf(text.charAt(whole)) >= 0;
    int end = marked ? afterDigits(text, whole + 1) : whole;
    int digits = end - 1 - (marked ? 1 : 0);
    if (digits > 0 && end < text.length() && "eE".indexOf(text.charAt(end)) >= 0) {
      int exponent = isSign(text, end + 1) ? end + 2 : end + 1;
      end = afterDigits(text, exponent);
      digits = end - exponent;
    }
    return digits > 0 && end == text.length();
  }

  private static boolean isSign(CharSequence text, int at) {
    return at < text.length() && "+-".indexOf(text.charAt(at)) >= 0;
  }

  private static int afterDigits(CharSequence text, int from) {
    int at = from;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    return at;
  }
}
