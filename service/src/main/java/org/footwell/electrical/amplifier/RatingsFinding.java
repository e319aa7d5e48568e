package org.footwell.electrical.amplifier;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about whether ratings agree. */
public enum RatingsFinding implements FindingCode {
  BELOW_LOWEST_RATED(WARNING),
  POWER_DOES_NOT_DOUBLE(NOTE),
  BRIDGED_POWER_HIGHER(WARNING),
  BRIDGED_POWER_LOWER(NOTE),
  SUPPLY_OF_OTHER_VEHICLES(WARNING);

  private final Verdict level;

  RatingsFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
