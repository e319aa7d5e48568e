package org.footwell.acoustic.exposure;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about an exposure. */
public enum ExposureFinding implements FindingCode {
  DOSE_ABOVE_RECOMMENDATION(WARNING),
  DOSE_ABOVE_RULE(STOP),
  ACTION_LEVEL_REACHED(NOTE),
  LEVEL_ABOVE_CEILING(STOP),
  LEVEL_ABOVE_TABLE(WARNING),
  PEAK_ABOVE_LIMIT(STOP),
  C_BELOW_A(WARNING),
  PEAK_BELOW_LEVEL(WARNING),
  PERIOD_NOT_COUNTED(NOTE),
  BASS_HEAVY(NOTE),
  BAND_OUTSIDE_WEIGHTING(NOTE);

  private final Verdict level;

  ExposureFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
