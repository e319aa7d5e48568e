package org.footwell.analysis;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a value that was sought. */
public enum SolveFinding implements FindingCode {
  TARGET_NOT_REACHED(STOP),
  OUTPUT_DOES_NOT_CHANGE(STOP),
  ANY_VALUE_DOES(NOTE),
  SEVERAL_VALUES(WARNING),
  OUTPUT_JUMPS(WARNING),
  OUTPUT_BREAKS_OFF(STOP),
  VALUES_REFUSED(NOTE),
  OUTPUT_ABSENT(NOTE);

  private final Verdict level;

  SolveFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
