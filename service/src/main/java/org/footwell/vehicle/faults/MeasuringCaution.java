package org.footwell.vehicle.faults;

import org.footwell.calculation.Caution;

/** Cautions for whoever measures in a finished vehicle; common practice, no source. */
enum MeasuringCaution implements Caution {
  WIRES_OFF_AMPLIFIER,
  SUPPLY_FUSE_OUT,
  SHORT_NOT_PLAYED,
  QUIET_WHILE_MEASURING
}
