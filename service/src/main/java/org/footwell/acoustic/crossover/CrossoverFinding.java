package org.footwell.acoustic.crossover;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about the crossovers of a system. */
public enum CrossoverFinding implements FindingCode {
  NO_CROSSOVER_WINDOW(STOP),
  CROSSOVER_COMPROMISE(WARNING),
  LOW_END_UNDECIDED(STOP),
  CROSSOVER_ROOM_SMALL(NOTE),
  CROSSOVERS_REVERSED(STOP),
  CROSSOVERS_CLOSE(WARNING),
  WAYS_REVERSED(STOP),
  WAYS_OUT_OF_ORDER(WARNING),
  WAY_DATA_MISSING(NOTE),
  QTS_ASSUMED(NOTE),
  DISPLACEMENT_LAW_LIMIT(NOTE),
  LOWEST_WAY_SHORT(WARNING),
  WAY_INVERTED(NOTE),
  PROGRAMME_POWER_TOO_HIGH(WARNING),
  AMPLIFIER_SHARE_TOO_HIGH(WARNING),
  CAPACITOR_EFFECT(NOTE),
  CAPACITOR_NEAR_RESONANCE(NOTE),
  TURN_ON_THUMP(NOTE);

  private final Verdict level;

  CrossoverFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
