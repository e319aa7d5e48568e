package org.footwell.fitting.carpentry;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a box to be cut. */
public enum CarpentryFinding implements FindingCode {
  BOX_MUST_BE_HELD(NOTE),
  PANEL_WANTS_BRACE(NOTE),
  CUTOUT_NEAR_EDGE(WARNING),
  DRIVER_TOO_DEEP(STOP),
  INSIDE_TOO_NARROW(STOP);

  private final Verdict level;

  CarpentryFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
