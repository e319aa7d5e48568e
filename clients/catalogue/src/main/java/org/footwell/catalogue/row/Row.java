package org.footwell.catalogue.row;

/**
 * One row of the catalogue.
 *
 * @param line line of the file it begins in, from 1
 * @param part its part number on one line, or null
 * @param json the request to send, or null when the row cannot be sent
 * @param figures its figures in one manner of writing, or null when it cannot be sent
 * @param remark what there is to say of it before it is sent, or null; why it cannot be sent
 */
public record Row(long line, String part, String json, String figures, Remark remark) {

  private static final int LONGEST_PART = 120;

  public static Row of(long line, String part, String json, String figures) {
    return new Row(line, tidied(part), json, figures, null);
  }

  public static Row refused(long line, String part, String code, String why) {
    return new Row(line, tidied(part), null, null, Remark.refusal(code, "", why));
  }

  /** The same row with something to say of it. */
  public Row with(Remark said) {
    return new Row(line, part, json, figures, said);
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
