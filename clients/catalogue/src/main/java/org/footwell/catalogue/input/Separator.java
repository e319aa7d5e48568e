package org.footwell.catalogue.input;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What separates the cells of a CSV. */
public enum Separator {
  COMMA(','),
  SEMICOLON(';'),
  TAB('\t');

  final char character;

  Separator(char character) {
    this.character = character;
  }

  /** What separates a header that this leaves in one piece. */
  Optional<Separator> ratherThanThis(List<String> header) {
    return Arrays.stream(values())
        .filter(other -> other != this && header.size() == 1)
        .filter(other -> header.get(0).indexOf(other.character) >= 0)
        .findFirst();
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
