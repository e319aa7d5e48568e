package org.footwell.signal;

import org.footwell.physics.Octaves;

/**
 * A band of frequencies with soft edges that moves nothing in time.
 *
 * @param lowHz lower edge, Hz, where half is left
 * @param highHz upper edge, Hz, where half is left
 */
public record PassBand(double lowHz, double highHz) {

  /** Width of an edge, octaves. */
  private static final double EDGE = 0.5;

  /** The middle on a logarithmic axis, Hz. */
  public double middleHz() {
    return Math.sqrt(lowHz * highHz);
  }

  public double widthHz() {
    return highHz - lowHz;
  }

  /** Factor at a frequency in Hz: 0 to 1, sin² of the octaves across each edge. */
  public double at(double frequencyHz) {
    if (frequencyHz <= 0) {
      return 0;
    }
    double rise = clipped(Octaves.between(lowHz, frequencyHz) / EDGE + 0.5);
    double fall = clipped(Octaves.between(frequencyHz, highHz) / EDGE + 0.5);
    double root = Math.sin(Math.PI / 2 * rise * fall);
    return root * root;
  }

  /** Factors for every bin of a spectrum. */
  public double[] factors(int bins, double rateHz) {
    double width = rateHz / (2 * (bins - 1));
    double[] factors = new double[bins];
    for (int k = 0; k < bins; k++) {
      factors[k] = at(k * width);
    }
    return factors;
  }

  private static double clipped(double x) {
    return Math.max(0, Math.min(1, x));
  }
}
