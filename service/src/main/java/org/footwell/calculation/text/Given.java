package org.footwell.calculation.text;

/** What was given, where that is no single value. */
public enum Given implements Words {
  TOO_LARGE,
  GROUP,
  LIST,
  ENTRIES,
  NONE_OF_THEM,
  MORE_THAN_ONE,
  FROM_TO,
  AT,
  BOTH;

  /** A way from one thing of the caller's to another. */
  public static Phrase fromTo(String from, String to) {
    return Phrase.of(FROM_TO).own("from", from).own("to", to);
  }

  /** One thing at the place of another. */
  public static Phrase at(String what, String where) {
    return Phrase.of(AT).own("what", what).own("where", where);
  }

  /** Two of one kind. */
  public static Phrase both(String one, String other) {
    return Phrase.of(BOTH).own("one", one).own("other", other);
  }
}
