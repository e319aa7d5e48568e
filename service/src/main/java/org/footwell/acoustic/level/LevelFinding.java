package org.footwell.acoustic.level;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a level. */
public enum LevelFinding implements FindingCode {
  SENSITIVITY_BASIS(NOTE),
  CABIN_MODEL(NOTE),
  COMPRESSION_MODEL_LIMIT(WARNING),
  TARGET_OUT_OF_REACH(STOP),
  THERMAL_LIMIT_PASSED(WARNING),
  DISPLACEMENT_LIMIT_PASSED(WARNING),
  CONE_NOT_A_PISTON(NOTE),
  CABIN_AT_OTHER_FREQUENCY(NOTE),
  BELOW_ROAD_NOISE(WARNING),
  ROAD_NOISE_NOT_COMPARABLE(NOTE),
  EXPOSURE_UNKNOWN(NOTE),
  EXPOSURE_LIMITED(WARNING),
  EXPOSURE_CEILING(STOP),
  PEAK_ABOVE_CEILING(WARNING),
  PEAK_NOT_WEIGHTED(WARNING),
  BAND_OUTSIDE_WEIGHTING(NOTE);

  private final Verdict level;

  LevelFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
