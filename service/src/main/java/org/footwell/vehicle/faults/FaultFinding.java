package org.footwell.vehicle.faults;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about the faults of a vehicle. */
public enum FaultFinding implements FindingCode {
  FAULT_FOUND(WARNING),
  FAULT_UNSURE(WARNING),
  FAULT_POSSIBLE(NOTE),
  NOTHING_FITS(WARNING),
  FAULTS_ALIKE(NOTE),
  MEASURE_NEXT(NOTE),
  FAULTS_UNSEEN(NOTE);

  private final Verdict level;

  FaultFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
