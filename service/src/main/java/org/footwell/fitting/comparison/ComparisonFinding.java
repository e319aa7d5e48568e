package org.footwell.fitting.comparison;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a replacement. */
public enum ComparisonFinding implements FindingCode {
  LARGEST_LEVEL_LOWER(WARNING),
  QUIETER_AT_SAME_SETTING(NOTE),
  MORE_POWER_NEEDED(NOTE),
  REPLACEMENT_BELOW_MINIMUM_LOAD(STOP),
  REPLACEMENT_LOADS_MORE(WARNING),
  AMPLIFIER_FAR_ABOVE_RATING(WARNING),
  TRAVEL_LIMITED(NOTE),
  PISTON_MODEL_LIMIT(NOTE),
  SENSITIVITY_NOT_PER_WATT(NOTE),
  SENSITIVITIES_UNLIKE(NOTE),
  REACH_UNLIKE(NOTE),
  PEAK_BELOW_CONTINUOUS(WARNING),
  CHANGE_AT_LEAST(NOTE),
  PRICE_PER_DB_LEFT_OUT(NOTE),
  DATA_NOT_GIVEN(NOTE),
  HEAVY_PART(WARNING),
  DOORS_HEAVIER(NOTE),
  VEHICLE_HEAVIER(NOTE),
  PAYLOAD_EXCEEDED(STOP);

  private final Verdict level;

  ComparisonFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
