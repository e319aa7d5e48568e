package org.footwell.electrical.passive;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about a passive network. */
public enum NetworkFinding implements FindingCode {
  NETWORK_LOAD_TOO_LOW(STOP),
  NETWORK_LOAD_BELOW_RATED(NOTE),
  FILTER_LOAD_LOW(WARNING),
  COIL_ACROSS_AMPLIFIER(STOP),
  CAPACITOR_ACROSS_AMPLIFIER(WARNING),
  LEVEL_HUMP(WARNING),
  INVERT_ONE_WAY(NOTE),
  BAND_SIDES_INTERACT(WARNING),
  DRIVER_SHIFTS_RESPONSE(WARNING),
  ROUNDING_SHIFTS_RESPONSE(NOTE),
  LOAD_UNLIKE_DRIVER(NOTE),
  PAD_GETS_HOT(WARNING);

  private final Verdict level;

  NetworkFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }
}
