package org.footwell.measured.sum;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a sum. */
public enum LoudspeakerSumFinding implements FindingCode {
  CHANNELS_CANCEL(WARNING),
  POLARITY_LOSES(WARNING),
  DELAY_LOSES(WARNING),
  LEVELS_APART(WARNING),
  LOSS_REMAINS(NOTE),
  DELAY_AMBIGUOUS(NOTE),
  DELAY_AT_END_OF_RANGE(WARNING),
  POSITIONS_SUM_DIFFERENTLY(NOTE),
  SUM_NEAR_NOISE(WARNING);

  private final Verdict level;

  LoudspeakerSumFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
