package org.footwell.acoustic.crossover;

import java.util.List;
import org.footwell.calculation.text.Words;

/** Why a crossover may not be lower. All of them protect the upper way. */
@SuppressWarnings("ImmutableEnumChecker") // lists that nobody can change
public enum LowReason implements Words {
  /** A multiple of the upper way's resonance. */
  RESONANCE(Remedy.LOWER_RESONANCE),
  /** The upper way's displacement at the wanted level, with the steepest order allowed. */
  DISPLACEMENT(Remedy.LOWER_LEVEL, Remedy.STEEPER_ORDER, Remedy.UPPER_MORE_TRAVEL),
  /** The upper way's heat from its part of the programme. */
  HEAT(Remedy.LOWER_LEVEL, Remedy.UPPER_MORE_POWER),
  /** What the upper way's data sheet allows. */
  DATA_SHEET(Remedy.UPPER_ALLOWED_LOWER),
  /** What the processor can be set to. */
  PROCESSOR(Remedy.PROCESSOR_LOWER);

  private final List<Remedy> remedies;

  LowReason(Remedy... remedies) {
    this.remedies = List.of(remedies);
  }

  /** What would move this end. */
  List<Remedy> remedies() {
    return remedies;
  }
}
