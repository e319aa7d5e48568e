package org.footwell.vehicle.faults;

/**
 * Logarithm of the Occam factor: what the evidence for a fault loses by a figure that is not known,
 * which is integrated out. By Laplace's method, with a normal prior of spread s around m, the best figure θ and J
 * the information of the measurements on it, the evidence is that of the best fit times
 * exp(−(θ − m)²/2(s² + 1/J))/√(1 + s²·J). Of a few values, all as likely, it is their mean.
 */
final class Occam {

  private Occam() {}

  /** Logarithm of the mean likelihood of values that are all as likely, over that of the best. */
  static double ofValues(double[] squares, double least) {
    if (Double.isInfinite(least)) {
      return 0;
    }
    double sum = 0;
    for (double square : squares) {
      sum += Math.exp((least - square) / 2);
    }
    return Math.log(sum / squares.length);
  }

  /** Of a figure that was fitted. */
  static double ofFitted(VehicleFault.Range range, double figure, double information) {
    double variance = range.spread() * range.spread();
    double away = figure - range.usual();
    double held = information == 0 ? 0 : away * away / (variance + 1 / information);
    return -held / 2 - Math.log(1 + variance * information) / 2;
  }
}
