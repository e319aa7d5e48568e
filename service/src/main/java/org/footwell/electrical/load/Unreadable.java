package org.footwell.electrical.load;

import org.footwell.calculation.text.Phrase;

/** Where and why a network cannot be read. */
final class Unreadable extends Exception {

  private static final long serialVersionUID = 1L;

  private final LoadFault code;
  private final int character;
  private final transient Phrase found;
  private final transient Phrase expected;

  /**
   * @param character position in the text, from 1
   * @param found what stands there, or null where the sentence says so
   * @param expected what could stand there
   */
  Unreadable(LoadFault code, int character, Phrase found, Phrase expected) {
    super(code.code(), null, false, false);
    this.code = code;
    this.character = character;
    this.found = found;
    this.expected = expected;
  }

  LoadFault code() {
    return code;
  }

  int character() {
    return character;
  }

  /** Whether its sentence says what was found. */
  boolean shows() {
    return found != null;
  }

  Phrase found() {
    return found;
  }

  Phrase expected() {
    return expected;
  }
}
