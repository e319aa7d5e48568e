package org.footwell.vehicle.faults;

import org.footwell.calculation.text.Words;

/** What can be measured in a finished vehicle. */
public enum FigureKind implements Words {
  /** Level of a channel alone. */
  LEVEL,
  /** Shape of its response. */
  RESPONSE,
  /** DC resistance of its loudspeaker. */
  METER,
  /** Impedance of its loudspeaker at a frequency. */
  IMPEDANCE,
  /** When it arrives, against the others. */
  ARRIVAL,
  /** Which way it pushes first. */
  POLARITY,
  /** What the supply of an amplifier loses on its way. */
  SUPPLY_DROP
}
