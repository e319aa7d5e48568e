package org.footwell.vehicle;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a plan as a whole. */
public enum PlanFinding implements FindingCode {
  DRIVER_NOT_CONNECTED(WARNING),
  PART_NOT_USED(NOTE),
  DRIVERS_APART(NOTE),
  BANDS_UNEVEN(WARNING),
  ROLE_UNEVEN(WARNING),
  LEVEL_NOT_KNOWN(NOTE),
  HEADROOM_NOT_KNOWN(NOTE),
  CROSSOVER_TOO_LOW(WARNING),
  CROSSOVER_TOO_HIGH(WARNING),
  MEASURED_LEVEL_OFF(WARNING),
  MEASURED_GAIN_OFF(WARNING),
  MEASURED_ARRIVAL_OFF(WARNING),
  MEASURED_POLARITY_WRONG(STOP),
  FILTER_OFF_CROSSOVER(WARNING),
  MOVEMENT_NOT_JUDGED(NOTE),
  COIL_RESISTANCE_TWICE(WARNING),
  MASS_NOT_KNOWN(NOTE),
  PRICE_NOT_KNOWN(NOTE),
  HEAVY_PARTS(WARNING),
  HEAVIER(NOTE),
  SUPPLY_FOR_MUSIC(NOTE);

  private final Verdict level;

  PlanFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
