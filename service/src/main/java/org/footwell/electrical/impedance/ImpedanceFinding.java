package org.footwell.electrical.impedance;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about an impedance over frequency. */
public enum ImpedanceFinding implements FindingCode {
  RATED_IMPEDANCE_TOO_HIGH(WARNING),
  RE_BELOW_RATED_LIMIT(NOTE),
  RESONANCE_OUTSIDE_RANGE(NOTE),
  COIL_TAKEN_AS_IDEAL(NOTE),
  FIT_POOR(WARNING),
  FIT_UNCERTAIN(WARNING),
  COIL_NOT_IN_TABLE(NOTE),
  COIL_EXPONENT_ASSUMED(NOTE),
  SECOND_PEAK(WARNING),
  SECOND_TABLE_INCONSISTENT(WARNING),
  AREA_INCONSISTENT(WARNING);

  private final Verdict level;

  ImpedanceFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
