package org.footwell.catalogue.row;

/**
 * One row of the catalogue.
 *
 * @param line line of the file it begins in, from 1
 * @param part its part number on one line, or null
 * @param json the request to send, or null when the row cannot be sent
 * @param refusal why it cannot be sent, otherwise null
 */
public record Row(long line, String part, String json, Remark refusal) {

  private static final int LONGEST_PART = 120;

  public static Row of(long line, String part, String json) {
    return new Row(line, tidied(part), json, null);
  }

  public static Row refused(long line, String part, String code, String why) {
    return new Row(line, tidied(part), null, Remark.refusal(code, "", why));
  }

  /** Part numbers go to terminals and into reports: on one line, without control characters. */
  private static String tidied(String part) {
    String name = part == null ? "" : part.replaceAll("\\p{Cntrl}+", " ").strip();
    if (name.isEmpty()) {
      return null;
    }
    return name.codePointCount(0, name.length()) <= LONGEST_PART
        ? name
        : name.substring(0, name.offsetByCodePoints(0, LONGEST_PART)) + "…";
  }
}
