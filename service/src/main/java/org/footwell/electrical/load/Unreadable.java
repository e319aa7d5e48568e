package org.footwell.electrical.load;

/** Where and why a network cannot be read. */
final class Unreadable extends Exception {

  private static final long serialVersionUID = 1L;

  private final LoadFault code;
  private final int character;
  private final String found;
  private final String expected;

  /**
   * @param character position in the text, from 1
   * @param found what stands there
   * @param expected what could stand there
   */
  Unreadable(LoadFault code, int character, String found, String expected) {
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

  String found() {
    return found;
  }

  String expected() {
    return expected;
  }
}
