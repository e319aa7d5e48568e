package org.footwell.calculation;

/**
 * Where a formula, a table or a limit comes from.
 *
 * @param citation title, number, edition and place, as a reader would look it up
 */
public record Source(String citation) {

  /** A fact of the trade that no publication is quoted for. */
  public static final Source COMMON_PRACTICE = new Source("common practice, no source");

  /** What follows from the definitions of the quantities alone. */
  public static final Source DEFINITION = new Source("follows from the definitions");

  public static Source of(String citation) {
    return new Source(citation);
  }
}
