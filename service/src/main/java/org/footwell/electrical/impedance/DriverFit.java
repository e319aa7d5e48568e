package org.footwell.electrical.impedance;

import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.footwell.calculation.Arithmetic;
import org.footwell.physics.Phasor;

/**
 * Finds a driver's parameters by least squares, after Levenberg and Marquardt.
 *
 * <p>What is made small is the logarithm of model over reading, real part for the modulus and
 * imaginary part for the phase: relative errors, so that the peak does not outweigh everything else.
 * Positive parameters are sought as their logarithms, so they stay positive and their standard
 * errors are relative.
 */
final class DriverFit {

  static final int RE = 0;
  static final int LE = 1;
  static final int EXPONENT = 2;
  static final int FS = 3;
  static final int QMS = 4;
  static final int QES = 5;
  static final int COUNT = 6;

  /** Where the inductance is stated, Hz. */
  static final double LE_AT_HZ = 1000;

  private static final int MOST_STEPS = 500;

  private final double[] values;
  private final RealMatrix covariance;
  private final double interval;
  private final double[] residuals;

  private DriverFit(double[] values, RealMatrix covariance, double interval, double[] residuals) {
    this.values = values;
    this.covariance = covariance;
    this.interval = interval;
    this.residuals = residuals;
  }

  /**
   * Fits the free parameters to readings.
   *
   * @param start all parameters; those that are not free stay as they are
   * @param free indices of those to find
   * @return nothing if the search came to no end or the readings do not determine them
   */
  static Optional<DriverFit> of(
      Readings readings, double[] start, int[] free, Arithmetic arithmetic) {
    int rows = readings.count() + readings.phaseCount();
    int freedom = rows - free.length;
    try {
      Optimum optimum =
          new LevenbergMarquardtOptimizer()
              .optimize(
                  new LeastSquaresBuilder()
                      .model(point -> model(readings, start, free, point, arithmetic))
                      .target(new double[rows])
                      .start(scaled(start, free))
                      .maxEvaluations(MOST_STEPS)
                      .maxIterations(MOST_STEPS)
                      .build());
      double variance = optimum.getCost() * optimum.getCost() / freedom;
      RealMatrix found = optimum.getCovariances(1e-14).scalarMultiply(variance);
      RealMatrix covariance = new Array2DRowRealMatrix(COUNT, COUNT);
      for (int i = 0; i < free.length; i++) {
        for (int k = 0; k < free.length; k++) {
          covariance.setEntry(free[i], free[k], found.getEntry(i, k));
        }
        // Rounding leaves less than nothing of what the readings do not determine.
        if (!(found.getEntry(i, i) >= 0 && found.getEntry(i, i) <= Double.MAX_VALUE)) {
          return Optional.empty();
        }
      }
      double[] values = unscaled(start, free, optimum.getPoint().toArray());
      return Optional.of(
          new DriverFit(
              values,
              covariance,
              new TDistribution(freedom).inverseCumulativeProbability(0.975),
              optimum.getResiduals().mapMultiply(-1).toArray()));
    } catch (MathIllegalStateException | MathIllegalArgumentException notDetermined) {
      return Optional.empty();
    }
  }

  /** A parameter, such as {@link #FS}. */
  double value(int parameter) {
    return values[parameter];
  }

  /** All parameters. */
  double[] values() {
    return values.clone();
  }

  /** Whether a parameter was sought, or stayed as it was. */
  boolean sought(int parameter) {
    return covariance.getEntry(parameter, parameter) > 0;
  }

  /** Half the 95 % interval of a parameter, relative; 0 when it was not sought. */
  double confidence(int parameter) {
    double error = interval * Math.sqrt(covariance.getEntry(parameter, parameter));
    return parameter == EXPONENT ? error / values[EXPONENT] : error;
  }

  /** Half the 95 % interval of the product of two parameters that are above 0, relative. */
  double confidenceOfProduct(int one, int other) {
    double variance =
        covariance.getEntry(one, one)
            + covariance.getEntry(other, other)
            + 2 * covariance.getEntry(one, other);
    return interval * Math.sqrt(Math.max(0, variance));
  }

  /** Logarithms of model over reading: of the moduli first, of the phases after them, radians. */
  double residual(int row) {
    return residuals[row];
  }

  /** The sum of their squares, which the search made small. */
  double squares() {
    double sum = 0;
    for (double residual : residuals) {
      sum += residual * residual;
    }
    return sum;
  }

  int residualCount() {
    return residuals.length;
  }

  /** Residuals of the moduli come first, those of the phases after them. */
  private static Pair<RealVector, RealMatrix> model(
      Readings readings, double[] start, int[] free, RealVector point, Arithmetic arithmetic) {
    arithmetic.checkDeadline();
    double[] p = unscaled(start, free, point.toArray());
    int n = readings.count();
    int rows = n + readings.phaseCount();
    double[] residuals = new double[rows];
    double[][] slopes = new double[rows][free.length];
    int phaseRow = n;
    for (int i = 0; i < n; i++) {
      Phasor[] z = withSlopes(p, readings.frequencyHz(i));
      residuals[i] = Math.log(z[COUNT].modulus() / readings.modulus(i));
      boolean hasPhase = readings.hasPhase(i);
      if (hasPhase) {
        residuals[phaseRow] = Math.atan2(z[COUNT].im(), z[COUNT].re()) - readings.phase(i);
      }
      for (int k = 0; k < free.length; k++) {
        // The derivative of ln Z: real part for its modulus, imaginary part for its angle.
        Phasor slope = z[free[k]].over(z[COUNT]);
        slopes[i][k] = slope.re();
        if (hasPhase) {
          slopes[phaseRow][k] = slope.im();
        }
      }
      phaseRow += hasPhase ? 1 : 0;
    }
    return new Pair<>(
        new ArrayRealVector(residuals, false), new Array2DRowRealMatrix(slopes, false));
  }

  /** The impedance, last, and its derivatives by the sought form of each parameter. */
  private static Phasor[] withSlopes(double[] p, double f) {
    double n = p[EXPONENT];
    double x = f / p[FS];
    Phasor resonance = new Phasor(1, p[QMS] * (x - 1 / x));
    Phasor motion = new Phasor(p[RE] * p[QMS] / p[QES], 0).over(resonance);
    double angle = n * Math.PI / 2;
    double reactance = 2 * Math.PI * LE_AT_HZ * p[LE] * Math.pow(f / LE_AT_HZ, n);
    Phasor coil = new Phasor(n == 1 ? 0 : reactance / Math.tan(angle), reactance);
    Phasor turn = new Phasor(0, p[QMS] * (x + 1 / x));
    Phasor[] z = new Phasor[COUNT + 1];
    z[RE] = new Phasor(p[RE], 0).plus(motion);
    z[LE] = coil;
    // d/dn of X·(cot(n·π/2) + j), X growing with ln(f/f0).
    z[EXPONENT] =
        coil.times(Math.log(f / LE_AT_HZ))
            .plus(new Phasor(-reactance * Math.PI / 2 / square(Math.sin(angle)), 0));
    z[FS] = motion.times(turn).over(resonance);
    z[QMS] = motion.over(resonance);
    z[QES] = motion.times(-1);
    z[COUNT] = z[RE].plus(coil);
    return z;
  }

  private static double square(double number) {
    return number * number;
  }

  private static double[] scaled(double[] values, int[] free) {
    double[] point = new double[free.length];
    for (int k = 0; k < free.length; k++) {
      point[k] = free[k] == EXPONENT ? values[EXPONENT] : Math.log(values[free[k]]);
    }
    return point;
  }

  private static double[] unscaled(double[] start, int[] free, double[] point) {
    double[] values = start.clone();
    for (int k = 0; k < free.length; k++) {
      values[free[k]] = free[k] == EXPONENT ? point[k] : Math.exp(point[k]);
    }
    return values;
  }
}
