package org.footwell.sheet;

/**
 * A figure on a sheet.
 *
 * @param value unrounded, as the answer has it; null where it is not known
 * @param text as it is read, with its unit
 */
public record WrittenFigure(Number value, String text) {

  /** Whether it is known. */
  public boolean known() {
    return value != null;
  }
}
