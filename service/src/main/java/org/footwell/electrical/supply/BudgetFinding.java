package org.footwell.electrical.supply;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about alternator, battery and what they feed. */
public enum BudgetFinding implements FindingCode {
  ALTERNATOR_BELOW_BATTERY(STOP),
  DISCHARGES_AT_CRUISE(STOP),
  DISCHARGES_AT_IDLE(WARNING),
  DISCHARGES_ON_AVERAGE(STOP),
  PEAKS_FROM_BATTERY(NOTE),
  SUPPLY_COLLAPSES(STOP),
  AMPLIFIER_STARVED(WARNING),
  CRANKING_DROPOUT(NOTE),
  SMART_ALTERNATOR(NOTE),
  CLEAN_POWER_LOST(NOTE),
  AVERAGE_ABOVE_PEAK(WARNING),
  MINIMUM_ABOVE_RATING(WARNING),
  CRANKING_ABOVE_REST(WARNING),
  STANDBY_TOO_SHORT(WARNING),
  CHARGE_TOO_LOW_TO_START(WARNING),
  NO_START_LEFT(WARNING),
  DEEP_DISCHARGE(WARNING),
  PEUKERT_ASSUMED(NOTE),
  RESERVE_ABOVE_CAPACITY(NOTE);

  private final Verdict level;

  BudgetFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
