package org.footwell.factory.clip;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about where an output clips. */
public enum ClipFinding implements FindingCode {
  NO_CLEAN_STEP(STOP),
  MEASURED_AGAINST_GROUND(STOP),
  FULL_SCALE_NEVER_CLEAN(STOP),
  MEASURING_UNKNOWN(WARNING),
  CLIPPING_ASYMMETRIC(WARNING),
  NOISE_HIDES_DISTORTION(WARNING),
  RECORDER_NEAR_FULL_SCALE(WARNING),
  TONE_NOT_STEADY(WARNING),
  TONES_DIFFER(WARNING),
  LEVEL_FALLS_WITH_VOLUME(WARNING),
  LEVEL_STOPS_RISING(WARNING),
  CLEAN_AGAIN_ABOVE(WARNING),
  STEPS_SKIPPED(NOTE),
  CLIPPING_NOT_REACHED(NOTE),
  LOW_STEPS_UNCLEAN(NOTE),
  BAND_CUT_BY_RATE(NOTE),
  HARMONICS_FEW(NOTE),
  HUM_SEEN(NOTE),
  FULL_SCALE_CALCULATED(NOTE),
  VOLTAGE_UNKNOWN(NOTE),
  CAPTURE_TRIMMED(NOTE);

  private final Verdict level;

  ClipFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
