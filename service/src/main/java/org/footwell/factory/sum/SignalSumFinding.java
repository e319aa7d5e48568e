package org.footwell.factory.sum;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a sum. */
public enum SignalSumFinding implements FindingCode {
  VEHICLE_SOUND_NOT_IN_SUM(WARNING),
  VEHICLE_SOUNDS_UNKNOWN(WARNING),
  NOISE_CANCELLING_DISTURBED(WARNING),
  SUM_NOT_FLAT(WARNING),
  SUM_NOT_FLAT_AT_BEST(WARNING),
  ALL_PASS_HIDDEN(WARNING),
  PHASES_CANCEL(WARNING),
  PHASE_TOO_COARSE(WARNING),
  HOLE(NOTE),
  OVERLAP(NOTE),
  LEAVE_OUT(NOTE),
  TURN_POLARITY(NOTE),
  UNDO_DELAY(NOTE),
  BAND_NARROWED(NOTE),
  SUM_FLAT(NOTE),
  SUM_VOLTAGE_ABOVE_SINGLE(NOTE);

  private final Verdict level;

  SignalSumFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
