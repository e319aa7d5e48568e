package org.footwell.acoustic.crossover;

import java.util.List;

/** Why a crossover may not be lower. All of them protect the upper way. */
@SuppressWarnings("ImmutableEnumChecker") // lists of texts that nobody can change
public enum LowReason {
  /** A multiple of the upper way's resonance. */
  RESONANCE("the resonance of the upper driver", "an upper driver with a lower resonance"),
  /** The upper way's displacement at the wanted level, with the steepest order allowed. */
  DISPLACEMENT(
      "the displacement of the upper driver",
      "a lower wanted level",
      "a steeper order",
      "an upper driver with more area or displacement"),
  /** The upper way's heat from its part of the programme. */
  HEAT(
      "the heat in the upper driver",
      "a lower wanted level",
      "an upper driver with more sensitivity or power"),
  /** What the upper way's data sheet allows. */
  DATA_SHEET(
      "the upper driver's data sheet (lower_limit_hz)",
      "an upper driver whose data sheet allows a lower crossover"),
  /** What the processor can be set to. */
  PROCESSOR("the processor", "a processor that can be set lower");

  private final String words;
  private final List<String> remedies;

  LowReason(String words, String... remedies) {
    this.words = words;
    this.remedies = List.of(remedies);
  }

  /** What it is, in words. */
  public String inWords() {
    return words;
  }

  /** What would move this end, each in words. */
  List<String> remedies() {
    return remedies;
  }
}
