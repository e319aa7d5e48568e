package org.footwell.physics;

/** An impedance over frequency. */
@FunctionalInterface
public interface Impedance {

  /** The impedance in ohm at a frequency in Hz, above 0. */
  Phasor at(double frequencyHz);
}
