package org.footwell.acoustic.loudness;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a change of balance. */
public enum LoudnessFinding implements FindingCode {
  LIFT_CAPPED(NOTE),
  CUT_CAPPED(NOTE),
  LIFT_ONLY_WHEN_QUIET(NOTE),
  CONTOUR_NOT_MEASURED(WARNING);

  private final Verdict level;

  LoudnessFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
