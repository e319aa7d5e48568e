package org.footwell.electrical.load;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a load. */
public enum LoadFinding implements FindingCode {
  LOWEST_MODULUS(NOTE),
  CURRENT_TO_EXPECT(NOTE),
  UNEVEN_SHARING(WARNING),
  UNEVEN_DRIVERS(WARNING),
  COIL_LEFT_OPEN(WARNING),
  DRIVER_NOT_CONNECTED(WARNING),
  RE_UNLIKE_RATED(WARNING),
  METER_READING_UNKNOWN(NOTE),
  METER_READING_SPLIT(NOTE),
  CABLE_SIZE_NOT_STANDARD(NOTE),
  CABLE_LOSS_HIGH(WARNING),
  DAMPING_FACTOR_LOW(NOTE);

  private final Verdict level;

  LoadFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
