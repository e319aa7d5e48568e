package org.footwell.calculation.rule;

import java.util.List;

/** A rule of a record, as the contract states it. */
public interface Rule {

  /** Which kind of rule it is, in snake_case. */
  String kind();

  /** The fields it is about, as dotted paths below the record, {@code *} for an index. */
  List<String> fields();

  /** The rule as a sentence. */
  String sentence();

  /**
   * A field of one record.
   *
   * @param pointer JSON Pointer from the record
   * @param value what is given there, or null; also where it could not be read
   * @param held whether the part that would hold it is given
   * @param given whether anything is given there
   */
  record Place(String pointer, Object value, boolean held, boolean given) {

    /** The same where something is given that could not be read. */
    public Place unread() {
      return new Place(pointer, null, held, true);
    }
  }

  /** Takes what breaks a rule. Pointers are from the record. */
  interface Breaches {

    /** None or several of the alternatives are given. */
    void notExactlyOne(List<String> alternatives, long given);

    /** Several of the alternatives are given; told at each that is. */
    void notAtMostOne(String pointer, List<String> alternatives);

    /** Something is missing. */
    void missing(String pointer);

    /** Something is missing beside what is given. */
    void missingBeside(String pointer, String field);

    /** Something is given that has no meaning here; null where it could not be read. */
    void unwanted(String pointer, Object given);

    /** The same stands in two entries. */
    void duplicate(String pointer, String given);

    /** A name that nothing has. */
    void unknownName(String pointer, String given, List<String> known, String field);

    /** A number that is not above the one before. */
    void notAscending(String pointer, double given, double before, boolean orEqual);
  }
}
