package org.footwell.vehicle.packages;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about packages. */
public enum PackageFinding implements FindingCode {
  WISHES_EXCLUDE_EACH_OTHER(STOP),
  WISH_OUT_OF_REACH(STOP),
  NOTHING_FITS(STOP),
  NO_OUTPUT_SUITS(STOP),
  SEARCH_CUT_SHORT(WARNING),
  REVIEW_STOPS_SOME(WARNING),
  LEVEL_BELOW_WISH(NOTE),
  NOT_ALL_LISTED(NOTE);

  private final Verdict level;

  PackageFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
