package org.footwell.catalogue.row;

/** Numbers of things in words. */
public final class Counted {

  private Counted() {}

  /** {@code 1 row}, {@code 2 rows}. */
  public static String of(long count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
