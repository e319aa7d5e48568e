package org.footwell.acoustic.enclosure.lowend;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a driver in any box. */
public enum BoxFinding implements FindingCode {
  DISPLACEMENT_BEYOND_XMAX(WARNING),
  DISPLACEMENT_IN_BAFFLE(WARNING),
  UNLOADED_BELOW_TUNING(WARNING),
  SUBSONIC_FILTER_NOT_ENOUGH(WARNING),
  XMAX_NOT_GIVEN(NOTE),
  POWER_BEYOND_RATING(WARNING),
  CONTINUOUS_POWER_NOT_GIVEN(NOTE),
  RESPONSE_PEAK_HIGH(NOTE),
  PEAK_ABOVE_BASS(NOTE),
  BOX_LARGER_THAN_SPACE(WARNING),
  BOX_LIKE_A_TUBE(WARNING),
  LUMPED_MODEL_LIMIT(NOTE),
  FIGURES_BEYOND_MODEL(WARNING),
  CABIN_RISE_MODEL(NOTE),
  CABIN_TABLE_SHORT(NOTE);

  private final Verdict level;

  BoxFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
