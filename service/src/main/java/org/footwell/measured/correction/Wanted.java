package org.footwell.measured.correction;

import java.util.Arrays;
import java.util.List;
import org.footwell.signal.CirclePoint;

/** What the filters of one channel should do, point by point, and what they must not. */
final class Wanted {

  /** A boost this small does no harm; the skirts of filters never end. */
  static final double TOLERATED_DB = 0.1;

  /** How much harder what must not be weighs. */
  private static final double FORBIDDEN = 6;

  private final double[] frequencies;
  private final CirclePoint[] points;
  private final double[] offDb;
  private final double[] gainsDb;
  private final double[] mostDb;
  private final FilterScope scope;
  private final double rateHz;

  /**
   * Points of a fit.
   *
   * @param frequencies Hz, equal steps of an octave
   * @param gainsDb what would bring the response to the wanted curve
   * @param boost whether it may be lifted
   */
  Wanted(
      double[] frequencies, double[] gainsDb, boolean[] boost, FilterScope scope, double rateHz) {
    this.frequencies = frequencies;
    this.points = CirclePoint.of(frequencies, rateHz);
    this.scope = scope;
    this.rateHz = rateHz;
    this.offDb = gainsDb;
    this.mostDb = new double[frequencies.length];
    this.gainsDb = new double[frequencies.length];
    for (int i = 0; i < frequencies.length; i++) {
      mostDb[i] = boost[i] ? scope.boostDb() : 0;
      this.gainsDb[i] = Math.max(-scope.cutDb(), Math.min(mostDb[i], gainsDb[i]));
    }
  }

  int size() {
    return frequencies.length;
  }

  double frequencyHz(int i) {
    return frequencies[i];
  }

  FilterScope scope() {
    return scope;
  }

  double rateHz() {
    return rateHz;
  }

  CirclePoint[] points() {
    return points;
  }

  /** What filters do at every point, dB. */
  double[] sum(List<PeakFilter> filters) {
    double[] sum = new double[size()];
    for (PeakFilter filter : filters) {
      filter.add(sum, points, rateHz, 1);
    }
    return sum;
  }

  /** What is missing, dB. */
  double[] missing(double[] sum) {
    double[] missing = new double[size()];
    Arrays.setAll(missing, i -> gainsDb[i] - sum[i]);
    return missing;
  }

  /** RMS of how far off the wanted curve the response is with filters, dB, allowed or not. */
  double error(double[] sum) {
    double squares = 0;
    for (int i = 0; i < sum.length; i++) {
      squares += Math.pow(offDb[i] - sum[i], 2);
    }
    return Math.sqrt(squares / sum.length);
  }

  /** Residuals of a fit: how far off, and more where a limit is passed. */
  double[] residuals(double[] sum) {
    double[] residuals = new double[size()];
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] = sum[i] - gainsDb[i] + FORBIDDEN * Math.max(0, sum[i] - mostDb[i]);
    }
    return residuals;
  }

  /** Derivative of a residual with respect to the sum. */
  double slope(int i, double sum) {
    return sum > mostDb[i] ? 1 + FORBIDDEN : 1;
  }

  /** By how much a limit is passed at the worst point, dB, and which point that is. */
  int worst(double[] sum) {
    int worst = 0;
    for (int i = 1; i < sum.length; i++) {
      worst = passed(sum, i) > passed(sum, worst) ? i : worst;
    }
    return worst;
  }

  double passed(double[] sum, int i) {
    return sum[i] - mostDb[i];
  }
}
