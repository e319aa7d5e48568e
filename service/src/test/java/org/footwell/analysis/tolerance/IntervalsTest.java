package org.footwell.analysis.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.footwell.reference.ReferenceTable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The 95 % intervals hold the true value at least so often, over many seeds. */
@Tag("long")
class IntervalsTest {

  private static final int SEEDS = 400;

  /** Three standard errors of a share of 0.95 in so many trials. */
  private static final double SLACK = 3 * Math.sqrt(0.95 * 0.05 / SEEDS);

  /**
   * A sum of normal inputs has the correlations a/√Σa², and Spearman's of a pair of normal figures is
   * 6/π·asin(r/2) (K. Pearson, 1907).
   */
  @Test
  void ofRankCorrelations() {
    double[] slopes = {3, 2, 1, 0.5, 0, -1, 0.2, 0.1, 0.8, -0.3, 0.4, 0.6};
    double norm = 0;
    for (double slope : slopes) {
      norm += slope * slope;
    }
    for (int i = 0; i < slopes.length; i++) {
      int input = i;
      double truth = 6 / Math.PI * Math.asin(slopes[i] / Math.sqrt(norm) / 2);
      double held =
          held(
              truth,
              seed -> correlationWithSum(SamplePoints.of(300, slopes.length, seed), slopes, input));
      assertTrue(held > 0.95 - SLACK, "input " + i + " held " + held);
    }
  }

  @Test
  void ofSobolIndices() {
    for (ReferenceTable.Row row : ReferenceTable.load("sobol-indices.csv").rows()) {
      KnownFunction known =
          KnownFunction.valueOf(row.text("function").toUpperCase(java.util.Locale.ROOT));
      int input = (int) row.number("input");
      if (row.number("total") < 0.001) {
        continue; // four decimals are too few to be a truth
      }
      for (int which = 0; which < 2; which++) {
        int index = which;
        double truth = row.number(which == 0 ? "first_order" : "total");
        double held = held(truth, seed -> known.indices(512, seed, input).get(index));
        assertTrue(held > 0.95 - 2 * SLACK, row + ": " + which + " held " + held);
      }
    }
  }

  /** What is claimed where nothing is to be claimed. */
  @Test
  void ofTwoInputsAlikeOneIsRarelyCalledTheLarger() {
    double[] slopes = {1, 1, 0.2};
    long claimed =
        LongStream.range(0, SEEDS)
            .filter(
                seed -> {
                  double[][] points = SamplePoints.of(200, slopes.length, seed);
                  Estimate one = correlationWithSum(points, slopes, 0);
                  Estimate other = correlationWithSum(points, slopes, 1);
                  return one.clearlyAbove(other) || other.clearlyAbove(one);
                })
            .count();
    assertTrue(claimed <= SEEDS / 50, claimed + " of " + SEEDS);
  }

  @Test
  void figuresThatGoExactlyTogetherHaveAnIntervalWithoutWidth() {
    double[] ranks = {1, 2, 3, 4, 5, 6, 7};
    double[] against = {7, 6, 5, 4, 3, 2, 1};
    assertEquals(new Estimate(1.0, 1.0, 1.0), RankCorrelation.of(ranks, ranks));
    assertEquals(new Estimate(-1.0, -1.0, -1.0), RankCorrelation.of(ranks, against));
    assertEquals(new Estimate(1.0, 1.0, 1.0), RankCorrelation.of(ranks, against).size());
  }

  private static double held(double truth, LongFunction<Estimate> estimate) {
    long held =
        LongStream.range(0, SEEDS)
            .filter(
                seed -> {
                  Estimate one = estimate.apply(seed);
                  return one.low() <= truth && truth <= one.high();
                })
            .count();
    return (double) held / SEEDS;
  }

  private static Estimate correlationWithSum(double[][] points, double[] slopes, int input) {
    double[] sum = new double[points[0].length];
    for (int i = 0; i < slopes.length; i++) {
      for (int n = 0; n < sum.length; n++) {
        sum[n] += slopes[i] * Distribution.NORMAL.quantile(points[i][n]);
      }
    }
    return RankCorrelation.of(RankCorrelation.ranks(points[input]), RankCorrelation.ranks(sum));
  }
}
