package org.footwell.analysis.tolerance;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Sobol' indices: which share of a figure's variance each draw makes, alone (first order: what knowing
 * it exactly would take away on average) and with all that it does together with others (total: what
 * would be left if all others were known).
 *
 * <p>Estimators (b) and (f) of table 2 in A. Saltelli et al., "Variance based sensitivity analysis of
 * model output", Computer Physics Communications 181 (2010), the second by M. J. W. Jansen (1999); the
 * figure is taken from its mean, which changes no expected value and makes the first one steadier.
 * Intervals are 1.96 standard errors of a ratio of means (delta method).
 */
final class VarianceShares {

  /** Where they are not asked for, or not to be had. */
  static final VarianceShares NONE = new VarianceShares(List.of());

  private final List<double[]> blocks;
  private final double mean;
  private final double[] variances;

  private VarianceShares(List<double[]> blocks) {
    this.blocks = blocks;
    this.mean =
        blocks.isEmpty() ? 0 : (StatUtils.mean(blocks.get(0)) + StatUtils.mean(blocks.get(1))) / 2;
    this.variances =
        blocks.isEmpty()
            ? new double[0]
            : each(n -> (square(first(n) - mean) + square(second(n) - mean)) / 2);
  }

  /**
   * Of a figure in samples.
   *
   * @param blocks its values in one set of samples, in another that has nothing to do with it, and for
   *     each draw in the first with this draw taken from the second
   */
  static VarianceShares of(List<double[]> blocks) {
    if (blocks.get(0).length < Budgets.LEAST) {
      return NONE;
    }
    VarianceShares shares = new VarianceShares(blocks);
    return StatUtils.mean(shares.variances) > 0 ? shares : NONE;
  }

  /** What a draw does alone, or null. */
  Estimate firstOrder(int draw) {
    return blocks.isEmpty()
        ? null
        : ratio(each(n -> (second(n) - mean) * (exchanged(draw, n) - first(n))));
  }

  /** What it does alone and together with others, or null. */
  Estimate total(int draw) {
    return blocks.isEmpty() ? null : ratio(each(n -> square(first(n) - exchanged(draw, n)) / 2));
  }

  private double first(int n) {
    return blocks.get(0)[n];
  }

  private double second(int n) {
    return blocks.get(1)[n];
  }

  private double exchanged(int draw, int n) {
    return blocks.get(Sampling.exchanged(draw))[n];
  }

  private double[] each(IntToDoubleFunction term) {
    return IntStream.range(0, blocks.get(0).length).mapToDouble(term).toArray();
  }

  private Estimate ratio(double... terms) {
    double variance = StatUtils.mean(variances);
    double index = StatUtils.mean(terms) / variance;
    double[] errors = each(n -> terms[n] - index * variances[n]);
    return Estimate.within(
        index, Math.sqrt(StatUtils.variance(errors, 0) / terms.length) / variance);
  }

  private static double square(double x) {
    return x * x;
  }
}
