package org.footwell.electrical.supply;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a supply cable and its fuses. */
public enum CableFinding implements FindingCode {
  RULES_FIRST(NOTE),
  MAIN_FUSE_PLACE(NOTE),
  FUSE_TOO_FAR(STOP),
  BRANCH_FUSE_PLACE(NOTE),
  EARTH_POINT(NOTE),
  EARTH_RETURN(NOTE),
  NO_SIZE_FITS(STOP),
  NO_GAUGE_FITS(NOTE),
  NO_OPERATING_POINT(STOP),
  CABLE_OVERLOADED(STOP),
  NO_FUSE_FITS(STOP),
  FULL_SINE_ABOVE_FUSE(NOTE),
  FULL_SINE_OPENS_FUSE(NOTE),
  AMPLIFIER_FUSE_LARGER(NOTE),
  AMPLIFIER_FUSE_SMALLER(WARNING),
  FUSES_FOR_58_V(WARNING),
  DROP_EXCEEDED(WARNING),
  DROP_HIGH(WARNING),
  COPPER_CLAD(WARNING),
  CONDUCTOR_TOO_HOT(STOP),
  SIZE_NOT_STANDARD(NOTE),
  BEYOND_AMPACITY_TABLE(NOTE),
  BLADE_BREAKING_CAPACITY(NOTE);

  private final Verdict level;

  CableFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
