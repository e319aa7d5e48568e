package org.footwell.vehicle.faults;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/** Sums of squares that errors alone leave, each over its usual size. */
final class ChiSquare {

  /** What agrees with measurements is so likely to lie nearer to them by errors alone. */
  private static final double AGREES = 0.95;

  private ChiSquare() {}

  /** What errors of some figures alone exceed once in twenty times. */
  static double usual(long figures) {
    return figures == 0
        ? 0
        : new ChiSquaredDistribution(null, figures).inverseCumulativeProbability(AGREES);
  }

  /** How likely errors as stated leave a sum of squares that is no smaller. */
  static double worse(double squares, int degrees) {
    return 1 - new ChiSquaredDistribution(null, degrees).cumulativeProbability(squares);
  }
}
