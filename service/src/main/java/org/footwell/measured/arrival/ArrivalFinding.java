package org.footwell.measured.arrival;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about arrivals. */
public enum ArrivalFinding implements FindingCode {
  DELAY_BEYOND_MAXIMUM(STOP),
  SWEEP_LENGTH_WRONG(STOP),
  ARRIVALS_IMPLAUSIBLE(STOP),
  SOUND_BEFORE_SWEEP(STOP),
  SETTING_BEYOND_MAXIMUM(WARNING),
  TIME_REFERENCE_MISSING(WARNING),
  SIGNAL_TO_NOISE_LOW(WARNING),
  ARRIVAL_BY_ENVELOPE(WARNING),
  POLARITY_INVERTED(WARNING),
  POLARITIES_DISAGREE(WARNING),
  PAIR_AGAINST_EACH_OTHER(WARNING),
  POLARITY_UNSURE(NOTE),
  PAIR_UNSURE(NOTE),
  REFLECTION_STRONGER(NOTE),
  NO_SHARP_ONSET(NOTE),
  MICROPHONES_DISAGREE(NOTE),
  SWEEP_LENGTH_NOT_TOLD(NOTE);

  private final Verdict level;

  ArrivalFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
