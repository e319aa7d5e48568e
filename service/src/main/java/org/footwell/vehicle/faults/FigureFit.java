package org.footwell.vehicle.faults;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/** Fits the figure of a fault that may be any. */
final class FigureFit {

  private static final double CLOSE = 1e-3;
  private static final int MOST_STEPS = 200;

  private FigureFit() {}

  /** The figure between two others that leaves the smallest square, looked for from a third on. */
  static double best(DoubleUnaryOperator square, double from, double to, double start) {
    return new BrentOptimizer(CLOSE, CLOSE)
        .optimize(
            new MaxEval(MOST_STEPS),
            GoalType.MINIMIZE,
            new UnivariateObjectiveFunction(square::applyAsDouble),
            new SearchInterval(from, to, start))
        .getPoint();
  }
}
