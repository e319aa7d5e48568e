package org.footwell.vehicle.faults;

/** Resistance that a bad joint adds to a supply; its figure is the common logarithm of ohms. */
final class JointResistance {

  /** Bad joints lie around 0.1 ohm; common practice, no source. */
  static final VehicleFault.Range RANGE = VehicleFault.Range.around(-1, 0.5, -2.5, 0.5, 0.5);

  private JointResistance() {}

  /** By its figure, ohm. */
  static double ohm(double figure) {
    return Math.pow(10, figure);
  }
}
