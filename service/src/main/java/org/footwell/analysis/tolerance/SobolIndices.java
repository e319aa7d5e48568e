package org.footwell.analysis.tolerance;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Which part of a figure's variance one input makes: alone (first order: what knowing it exactly would
 * take away on average) and with all that it does together with others (total: what would be left if
 * all others were known).
 *
 * <p>Estimators (b) and (f) of table 2 in A. Saltelli et al., "Variance based sensitivity analysis of
 * model output", Computer Physics Communications 181 (2010), the second by M. J. W. Jansen (1999); the
 * figure is taken from its mean, which changes no expected value and makes the first one steadier.
 * Intervals are 1.96 standard errors of a ratio of means (delta method).
 */
final class SobolIndices {

  private final double[] first;
  private final double[] second;
  private final double mean;
  private final double[] variances;

  /**
   * Of a figure in two sets of samples that have nothing to do with each other.
   *
   * @param first its values in the one
   * @param second in the other
   */
  SobolIndices(double[] first, double[] second) {
    this.first = first;
    this.second = second;
    this.mean = (StatUtils.mean(first) + StatUtils.mean(second)) / 2;
    this.variances =
        each(n -> (square(first[n] - mean) + square(second[n] - mean)) / 2);
  }

  /**
   * What an input does alone.
   *
   * @param exchanged the figure in the first set with this input taken from the second
   */
  Estimate firstOrder(double[] exchanged) {
    return ratio(each(n -> (second[n] - mean) * (exchanged[n] - first[n])));
  }

  /** What it does alone and together with others. */
  Estimate total(double[] exchanged) {
    return ratio(each(n -> square(first[n] - exchanged[n]) / 2));
  }

  private double[] each(IntToDoubleFunction term) {
    return IntStream.range(0, first.length).mapToDouble(term).toArray();
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
