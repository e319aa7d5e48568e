package org.footwell.calculation.rule;

import java.util.List;

/** A rule that says in itself what breaks it, of fields of any record. */
public interface FieldRule extends Rule {

  /** Whether it is held against each field by itself, whatever another may be. */
  default boolean eachAlone() {
    return false;
  }

  /** Whether it only asks what is given, whatever stands there. */
  default boolean ofPresence() {
    return false;
  }

  /**
   * Whether a record keeps it, whichever of the fields these are, each of which it can have once: then no
   * closer look is needed, as with most records.
   *
   * @param given how many are given
   * @param missing how many are not, though what would hold them is
   * @param of how many there are
   */
  default boolean keptWith(int given, int missing, int of) {
    return false;
  }

  /**
   * Holds a record against the rule.
   *
   * @param places for each of {@link #fields} where it stands in the record and its value; only of
   *     those that could be read, or of which it is known at least whether they are given where the
   *     rule is one of presence; and of all of them unless each is held against it alone
   */
  void check(List<List<Place>> places, Breaches breaches);
}
