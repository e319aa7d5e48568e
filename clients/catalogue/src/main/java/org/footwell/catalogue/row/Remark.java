package org.footwell.catalogue.row;

/**
 * One thing to say about a row: a finding of the service, or why the row was refused.
 *
 * @param code stable code, the rule of reports
 * @param field the field it is about, dotted; empty for the whole row
 * @param text the sentence
 */
public record Remark(Level level, String code, String field, String text) {

  private static final String REFUSED = "refused-";

  /** Why a row could not be checked: as bad as the worst finding. */
  public static Remark refusal(String code, String field, String text) {
    return new Remark(Level.STOP, REFUSED + code, field, text);
  }

  public boolean refused() {
    return code.startsWith(REFUSED);
  }
}
