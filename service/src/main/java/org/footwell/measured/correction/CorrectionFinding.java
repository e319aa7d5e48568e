package org.footwell.measured.correction;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a correction. */
public enum CorrectionFinding implements FindingCode {
  DIPS_NOT_TESTED(WARNING),
  RANGE_NEAR_NOISE(WARNING),
  RANGE_BEYOND_GATE(WARNING),
  RANGE_BEYOND_SWEEP(WARNING),
  FOUND_RANGE_BEYOND_SWEEP(NOTE),
  MOVING_DIP_LEFT(NOTE),
  HEADROOM_NEEDED(NOTE),
  LITTLE_GAINED(NOTE),
  ERROR_LEFT(NOTE),
  CORRECTION_RANGE_FOUND(NOTE);

  private final Verdict level;

  CorrectionFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
