package org.footwell.analysis.tolerance;

import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.util.MathArrays;

/**
 * Points spread evenly in the unit cube: Sobol' points with a random digital shift, so that one
 * answer can be repeated and another drawn.
 *
 * <p>Only the first {@value #TOGETHER} coordinates of the sequence are used. Higher ones fill planes so
 * unevenly until there are very many points that two of them look related (with 2,000 points some
 * pairs of the first 300 have a correlation of 0.2, of the first 1,000 of 0.9, whatever the shift),
 * and an input would be taken for another. So inputs come in groups of {@value #TOGETHER}, each with
 * the same points, shifts of its own and in an order of its own.
 *
 * <p>A. B. Owen, "Latin supercube sampling for very high-dimensional simulations", ACM Transactions on
 * Modeling and Computer Simulation 8 (1998). The first point, all zeros, is not left out: shifted it
 * is one like the others, and without it the points are no net any more (A. B. Owen, "On dropping the
 * first Sobol' point", arXiv:2008.08051).
 */
final class SamplePoints {

  static final int TOGETHER = 8;

  /** Binary digits of a coordinate that Commons Math makes. */
  private static final int DIGITS = 52;

  static final double UNIT = 0x1p-52;

  private SamplePoints() {}

  /**
   * The coordinates of all points.
   *
   * @param count number of points
   * @return for each coordinate those of the points in order, all above 0 and below 1
   */
  static double[][] of(int count, int coordinates, long seed) {
    long[][] digits = digits(count, Math.min(coordinates, TOGETHER));
    RandomGenerator random = new MersenneTwister(seed);
    double[][] points = new double[coordinates][count];
    int[] order = MathArrays.natural(count);
    for (int i = 0; i < coordinates; i++) {
      if (i > 0 && i % TOGETHER == 0) {
        MathArrays.shuffle(order, random);
      }
      long[] column = digits[i % TOGETHER];
      long shift = random.nextLong() >>> (Long.SIZE - DIGITS);
      for (int n = 0; n < count; n++) {
        points[i][n] = ((column[order[n]] ^ shift) + 0.5) * UNIT;
      }
    }
    return points;
  }

  /** The sequence itself, each coordinate as a whole number of 2 to the power of -52. */
  static long[][] digits(int count, int coordinates) {
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(coordinates);
    long[][] digits = new long[coordinates][count];
    for (int n = 0; n < count; n++) {
      double[] point = sobol.nextVector();
      for (int i = 0; i < coordinates; i++) {
        digits[i][n] = (long) (point[i] / UNIT);
      }
    }
    return digits;
  }
}
