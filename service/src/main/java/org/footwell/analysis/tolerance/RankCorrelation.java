package org.footwell.analysis.tolerance;

import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.ranking.NaNStrategy;
import org.apache.commons.math3.stat.ranking.NaturalRanking;
import org.apache.commons.math3.stat.ranking.TiesStrategy;

/** How steadily one figure rises or falls with another, from -1 to 1: Spearman's. */
final class RankCorrelation {

  private static final NaturalRanking RANKING =
      new NaturalRanking(NaNStrategy.FAILED, TiesStrategy.AVERAGE);

  private static final PearsonsCorrelation CORRELATION = new PearsonsCorrelation();

  private RankCorrelation() {}

  /** The place of each in order of size from 1, the same for those alike. */
  static double[] ranks(double... values) {
    return RANKING.rank(values);
  }

  /**
   * From the ranks of two figures in the same samples, none of which is the same throughout.
   *
   * <p>Interval: Fisher's transformation with the variance (1 + r²/2)/(n − 3), D. G. Bonett and T. A.
   * Wright, "Sample size requirements for estimating Pearson, Kendall and Spearman correlations",
   * Psychometrika 65 (2000); holds for r up to 0.95 and is wide rather than narrow for evenly spread
   * samples.
   */
  static Estimate of(double[] ranks, double[] others) {
    double r = Math.max(-1, Math.min(CORRELATION.correlation(ranks, others), 1));
    double atanh = Math.log((1 + r) / (1 - r)) / 2;
    double half = Estimate.NORMAL_95 * Math.sqrt((1 + r * r / 2) / (ranks.length - 3));
    return new Estimate(r, Math.tanh(atanh - half), Math.tanh(atanh + half));
  }
}
