package org.footwell.electrical.amplifier;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about an amplifier on a load. */
public enum AmplifierFinding implements FindingCode {
  RAILS_BELOW_DROP(STOP),
  LOAD_BELOW_MINIMUM(STOP),
  LOAD_DIPS_BELOW_MINIMUM(NOTE),
  MINIMUM_NOT_GIVEN(NOTE),
  BRIDGED_MINIMUM_DOUBTFUL(WARNING),
  LOAD_HARDLY_ANY(WARNING),
  LOAD_LOW_BUT_ALLOWED(NOTE),
  AMPLIFIER_TOO_WEAK(WARNING),
  AMPLIFIER_CAN_DESTROY_DRIVER(WARNING),
  CURRENT_LIMIT_FIRST(WARNING),
  RATING_NOT_CLEAN(WARNING),
  RATING_ONLY_SQUARE_WAVE(WARNING),
  RATINGS_REGULATED(NOTE),
  RATINGS_POWER_LIMITED(WARNING),
  RATINGS_INCONSISTENT(WARNING),
  SAG_NEGATIVE(WARNING),
  OUTSIDE_RATED_LOADS(NOTE),
  BASIS_NOT_CLEAN(NOTE),
  BRIDGED_RATINGS_HALVED(NOTE);

  private final Verdict level;

  AmplifierFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
