package org.footwell.acoustic.filters;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;
import org.footwell.calculation.Arithmetic;
import org.footwell.physics.Octaves;

/** Highest and lowest level of a curve within a band, in dB and where, in Hz. */
record LevelRange(double highestDb, double highestHz, double lowestDb, double lowestHz) {

  /** A deeper hole is a hole: its depth says nothing more. */
  static final double DEEPEST_DB = 60;

  private static final int PER_OCTAVE = 48;

  double spreadDb() {
    return highestDb - lowestDb;
  }

  /**
   * Frequencies from one to another, {@value #PER_OCTAVE} to the octave, with those between them
   * where something narrow may be: corners and centres of sections.
   */
  static double[] grid(double fromHz, double toHz, double[] narrow) {
    int steps = Math.max(8, (int) Math.ceil(Octaves.between(fromHz, toHz) * PER_OCTAVE));
    DoubleStream even =
        DoubleStream.iterate(0, i -> i + 1)
            .limit(steps + 1L)
            .map(i -> i == steps ? toHz : fromHz * Math.pow(toHz / fromHz, i / steps));
    return DoubleStream.concat(even, Arrays.stream(narrow).filter(f -> f > fromHz && f < toHz))
        .sorted()
        .distinct()
        .toArray();
  }

  /** Looks on the grid, then exactly around the highest and the lowest point of it. */
  static LevelRange of(DoubleUnaryOperator levelDb, double[] grid, Arithmetic steps) {
    steps.checkDeadline();
    int highest = 0;
    int lowest = 0;
    double[] levels = Arrays.stream(grid).map(levelDb).toArray();
    for (int i = 1; i < levels.length; i++) {
      highest = levels[i] > levels[highest] ? i : highest;
      lowest = levels[i] < levels[lowest] ? i : lowest;
    }
    double[] high = exact(levelDb, grid, highest, levels[highest], GoalType.MAXIMIZE);
    double[] low = exact(levelDb, grid, lowest, levels[lowest], GoalType.MINIMIZE);
    return new LevelRange(high[1], high[0], Math.max(low[1], high[1] - DEEPEST_DB), low[0]);
  }

  private static double[] exact(
      DoubleUnaryOperator levelDb, double[] grid, int i, double level, GoalType goal) {
    if (i == 0 || i == grid.length - 1) {
      return new double[] {grid[i], level};
    }
    UnivariatePointValuePair found =
        new BrentOptimizer(1e-9, 1e-12)
            .optimize(
                new MaxEval(200),
                new UnivariateObjectiveFunction(l -> levelDb.applyAsDouble(Math.exp(l))),
                goal,
                new SearchInterval(
                    Math.log(grid[i - 1]), Math.log(grid[i + 1]), Math.log(grid[i])));
    return new double[] {Math.exp(found.getPoint()), found.getValue()};
  }
}
