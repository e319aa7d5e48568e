package org.footwell.measured.balance;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about levels. */
public enum BalanceFinding implements FindingCode {
  TRIM_LARGE(WARNING),
  BAND_NEAR_NOISE(WARNING),
  GATE_TOO_SHORT_FOR_BASS(WARNING),
  BAND_BEYOND_SWEEP(WARNING),
  PAIR_UNEVEN(NOTE),
  PAIR_UNEVEN_IN_BANDS(NOTE),
  PAIR_WITHOUT_COMMON_BAND(WARNING),
  PLAYING_BAND_FOUND(NOTE),
  ONE_POSITION_ONLY(NOTE);

  private final Verdict level;

  BalanceFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
