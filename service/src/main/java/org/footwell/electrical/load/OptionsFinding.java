package org.footwell.electrical.load;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about the networks that coils can be wired as. */
public enum OptionsFinding implements FindingCode {
  NONE_IN_WINDOW(STOP),
  ONLY_UNEVEN(WARNING),
  UNEVEN_GIVES_MORE(NOTE);

  private final Verdict level;

  OptionsFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
