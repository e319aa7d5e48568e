package org.footwell.impedance;

/** An impedance over frequency. */
@FunctionalInterface
interface Impedance {

  /** The impedance in ohm at a frequency in Hz, above 0. */
  Phasor at(double frequencyHz);
}
