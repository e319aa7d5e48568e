package org.footwell.electrical.heat;

import org.apache.commons.math3.util.FastMath;
import org.footwell.calculation.Source;

/**
 * Mean of the current that both halves of a push-pull stage carry together. Without quiescent
 * current that is the mean rectified output current; with one it is the mean of √(i² + 4·Iq²), for
 * in halves of equal exponential characteristic the product of the currents stays at Iq² while
 * their difference is i.
 */
final class MeanCurrent {

  static final Source HALF_NORMAL =
      Source.of("Mean of the half-normal distribution, σ·√(2/π); NIST DLMF 19.8 for E(m)");

  /** Mean over RMS of a rectified sine: 2·√2/π = 0.9003. */
  static final double RECTIFIED_SINE = 2 * Math.sqrt(2) / Math.PI;

  /** Mean over RMS of a rectified Gaussian signal: √(2/π) = 0.7979. */
  static final double RECTIFIED_GAUSSIAN = Math.sqrt(2 / Math.PI);

  /** A Gaussian signal is practically never beyond this many times its RMS. */
  private static final double FARTHEST = 9;

  private static final int STEPS = 400;

  /** The arithmetic-geometric mean doubles its digits each turn; a dozen is more than enough. */
  private static final int TURNS = 40;

  private MeanCurrent() {}

  /**
   * For a sine: (2/π)·√(Î² + 4·Iq²)·E(m), m = Î²/(Î² + 4·Iq²), E the complete elliptic integral of
   * the second kind.
   *
   * @param rmsA output current, A RMS, at least 0
   * @param quiescentA Iq, A, at least 0
   */
  static double sine(double rmsA, double quiescentA) {
    double idle = 2 * quiescentA;
    if (idle == 0) {
      return RECTIFIED_SINE * rmsA;
    }
    double peak = Math.sqrt(2) * rmsA;
    double whole = Math.hypot(peak, idle);
    return 2 / Math.PI * whole * secondKind(idle / whole, peak / whole);
  }

  /**
   * For a Gaussian signal: ∫ √(i² + 4·Iq²)·density(i) di by the trapezoidal rule after i = 2·Iq·sinh
   * t, which makes a smooth function of it that falls off faster than any exponential.
   */
  static double gaussian(double rmsA, double quiescentA) {
    double idle = 2 * quiescentA;
    if (idle == 0) {
      return RECTIFIED_GAUSSIAN * rmsA;
    }
    if (rmsA == 0) {
      return idle;
    }
    double far = FARTHEST * rmsA / idle;
    double step = FastMath.asinh(far) / STEPS;
    double sum = 0.5 * gaussianAt(0, idle, rmsA);
    for (int i = 1; i <= STEPS; i++) {
      sum += gaussianAt(i * step, idle, rmsA);
    }
    return 2 * step * sum;
  }

  private static double gaussianAt(double t, double idle, double rmsA) {
    double of = idle * Math.sinh(t) / rmsA;
    double density = Math.exp(-of * of / 2) / (rmsA * Math.sqrt(2 * Math.PI));
    double cosh = Math.cosh(t);
    return idle * cosh * idle * cosh * density;
  }

  /**
   * Complete elliptic integral of the second kind by the arithmetic-geometric mean (NIST Digital
   * Library of Mathematical Functions, 19.8.6).
   *
   * @param complement k' = √(1 − k²), above 0
   * @param modulus k
   */
  private static double secondKind(double complement, double modulus) {
    double a = 1;
    double g = complement;
    double sum = modulus * modulus / 2;
    double weight = 0.5;
    for (int turn = 0; turn < TURNS && a - g > 1e-16 * a; turn++) {
      double c = (a - g) / 2;
      double mean = (a + g) / 2;
      g = Math.sqrt(a * g);
      a = mean;
      weight *= 2;
      sum += weight * c * c;
    }
    return Math.PI / (2 * a) * (1 - sum);
  }
}
