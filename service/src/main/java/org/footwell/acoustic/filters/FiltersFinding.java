package org.footwell.acoustic.filters;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about digital filters and their sum. */
public enum FiltersFinding implements FindingCode {
  ROUNDED_UNSTABLE(STOP),
  COEFFICIENT_OUT_OF_RANGE(STOP),
  SECTION_ROUNDED_AWAY(STOP),
  ROUNDING_CHANGES_LEVEL(WARNING),
  POLARITY_SUMS_BETTER(WARNING),
  SUM_UNEVEN(WARNING),
  LEVEL_FALLS_AT_HEIGHT(WARNING),
  BAND_PASS_CLOSED(WARNING),
  DELAY_SUMS_BETTER(WARNING),
  SUM_SHAPED(NOTE),
  NO_CROSSING(NOTE),
  FULL_SCALE_EXCEEDED(NOTE),
  NEAR_HALF_RATE(NOTE),
  POINT_SOURCES_ASSUMED(NOTE),
  HEIGHTS_WITHOUT_LISTENER(NOTE);

  private final Verdict level;

  FiltersFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
