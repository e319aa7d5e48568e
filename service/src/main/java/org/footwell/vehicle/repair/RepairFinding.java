package org.footwell.vehicle.repair;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about repairs of a plan. */
public enum RepairFinding implements FindingCode {
  REPAIR_CLEARS_ALL(NOTE),
  REPAIR_LEAVES_SOME(WARNING),
  REPAIR_COSTS_LEVEL(NOTE),
  NO_REPAIR(WARNING),
  REPAIRS_CUT_SHORT(WARNING),
  MEASURED_NOT_REPAIRED(NOTE);

  private final Verdict level;

  RepairFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
