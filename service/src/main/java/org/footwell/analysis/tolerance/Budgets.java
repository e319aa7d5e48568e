package org.footwell.analysis.tolerance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.footwell.calculation.Arithmetic;

/** Draws up the budget of each output from what the runs came to. */
final class Budgets {

  /** Fewer values give no figures. */
  static final int LEAST = 10;

  private static final int MOST_DRIVERS = 20;

  /** A smaller range, as a share of the number, is what calculating leaves of equal numbers. */
  private static final double NOTHING = 1e-9;

  private final Sampling sampling;
  private final List<String> drawn;
  private final Runs runs;
  private final Arithmetic steps;

  /**
   * Of runs.
   *
   * @param drawn what each draw moves
   * @param steps knows the deadline, and takes the steps of the workings
   */
  Budgets(Sampling sampling, List<String> drawn, Runs runs, Arithmetic steps) {
    this.sampling = sampling;
    this.drawn = drawn;
    this.runs = runs;
    this.steps = steps;
  }

  /** The budget of an output, by its index. */
  OutputBudget of(int output, String path, double stated) {
    double[] values = runs.output(output, 0, sampling.count());
    int[] there = answered(values);
    OutputBudgetBuilder budget =
        OutputBudgetBuilder.builder()
            .path(path)
            .stated(Double.isNaN(stated) ? null : (Double) stated)
            .answeredCount(there.length)
            .drivers(List.of());
    if (there.length < LEAST) {
      return budget.build();
    }
    double[] found = at(values, there);
    double deviation = Math.sqrt(StatUtils.variance(found));
    Percentile percentile = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
    percentile.setData(found);
    return budget
        .mean(StatUtils.mean(found))
        .deviation(deviation)
        .p5(percentile.evaluate(5))
        .p50(percentile.evaluate(50))
        .p95(percentile.evaluate(95))
        .drivers(changes(found) ? drivers(output, found, there, deviation) : List.of())
        .build();
  }

  private static boolean changes(double... values) {
    double least = StatUtils.min(values);
    double most = StatUtils.max(values);
    return most - least > NOTHING * Math.max(Math.abs(least), Math.abs(most));
  }

  /** What a draw does to an output. */
  private record Effect(String input, Estimate correlation, Estimate first, Estimate total) {

    /** How much it does, in the figure the inputs are ranked by. */
    Estimate strength() {
      return OutputDriver.strength(first, correlation);
    }
  }

  private List<OutputDriver> drivers(int output, double[] found, int[] there, double deviation) {
    List<Effect> effects = effects(output, found, there);
    return effects.stream()
        .sorted(Comparator.comparing((Effect one) -> one.strength().value()).reversed())
        .limit(MOST_DRIVERS)
        .map(one -> driver(one, effects, deviation))
        .toList();
  }

  private List<Effect> effects(int output, double[] found, int... there) {
    double[] order = RankCorrelation.ranks(found);
    VarianceShares shares = sampling.hasIndices() ? shares(output) : VarianceShares.NONE;
    List<Effect> effects = new ArrayList<>();
    for (int draw = 0; draw < drawn.size(); draw++) {
      steps.checkDeadline();
      double[] ranks =
          there.length == sampling.count()
              ? sampling.ranks(draw)
              : RankCorrelation.ranks(at(sampling.drawn(draw), there));
      effects.add(
          new Effect(
              drawn.get(draw),
              RankCorrelation.of(ranks, order),
              shares.firstOrder(draw),
              shares.total(draw)));
    }
    return effects;
  }

  private OutputDriver driver(Effect one, List<Effect> all, double deviation) {
    long more = all.stream().filter(other -> other.strength().clearlyAbove(one.strength())).count();
    double left =
        one.first() == null
            ? steps.apply(LeftOver.BY_CORRELATION, deviation, one.correlation().value())
            : steps.apply(LeftOver.BY_FIRST_ORDER, deviation, one.first().value());
    return new OutputDriver(
        one.input(), 1 + (int) more, one.correlation(), one.first(), one.total(), left);
  }

  /** Of the samples that have a number in every block. */
  private VarianceShares shares(int output) {
    double[][] blocks =
        IntStream.range(0, Sampling.exchanged(sampling.draws()))
            .mapToObj(block -> runs.output(output, block, sampling.count()))
            .toArray(double[][]::new);
    int[] there =
        IntStream.range(0, sampling.count())
            .filter(n -> Arrays.stream(blocks).noneMatch(block -> Double.isNaN(block[n])))
            .toArray();
    return VarianceShares.of(Arrays.stream(blocks).map(block -> at(block, there)).toList());
  }

  private static int[] answered(double... values) {
    return IntStream.range(0, values.length).filter(n -> !Double.isNaN(values[n])).toArray();
  }

  private static double[] at(double[] values, int... there) {
    return there.length == values.length
        ? values
        : Arrays.stream(there).mapToDouble(n -> values[n]).toArray();
  }
}
