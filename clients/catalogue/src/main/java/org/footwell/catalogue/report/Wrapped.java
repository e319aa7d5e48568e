package org.footwell.catalogue.report;

/** Sentences in lines of a readable length. */
final class Wrapped {

  private static final int WIDTH = 88;

  private Wrapped() {}

  /** The text after a lead, its further lines indented as far as the lead is long. */
  static String after(String lead, String text) {
    StringBuilder out = new StringBuilder(lead);
    int column = lead.length();
    for (String word : text.split(" ", -1)) {
      if (column > lead.length() && column + 1 + word.length() > WIDTH) {
        out.append('\n').append(" ".repeat(lead.length()));
        column = lead.length();
      } else if (column > lead.length()) {
        out.append(' ');
        column++;
      }
      out.append(word);
      column += word.length();
    }
    return out.toString();
  }
}
