package org.footwell.factory.rolloff;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about bass that falls behind. */
public enum RolloffFinding implements FindingCode {
  LIMIT_ALREADY_PASSED(WARNING),
  COMPENSATION_ENDS(WARNING),
  BASS_FALLS_FROM_THE_START(WARNING),
  MIDRANGE_DOES_NOT_RISE(WARNING),
  CAPTURE_TOO_SHORT_FOR_BASS(WARNING),
  BASS_AHEAD(NOTE),
  BASS_FALLS_BEHIND(NOTE),
  BASS_KEEPS_UP(NOTE),
  SHELF_FITS_BADLY(NOTE),
  LIMITS_UNKNOWN(NOTE),
  CONE_TOO_LARGE_FOR_MODEL(NOTE);

  private final Verdict level;

  RolloffFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
