package org.footwell.analysis.tolerance;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about an error budget. */
public enum ToleranceFinding implements FindingCode {
  MEASURE_FIRST(NOTE),
  MEASURE_ONE_OF(NOTE),
  NO_INPUT_STANDS_OUT(NOTE),
  VERDICT_AT_RISK(WARNING),
  SAMPLES_REFUSED(WARNING);

  private final Verdict level;

  ToleranceFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
