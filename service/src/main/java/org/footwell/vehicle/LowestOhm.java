package org.footwell.vehicle;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.Grid;

/**
 * The lowest modulus of a channel from 20 Hz to 20 kHz: on the grid, then exactly beside it.
 *
 * @param hz where
 * @param ohm the modulus there
 */
record LowestOhm(double hz, double ohm) {

  private static final double FROM_HZ = 20;
  private static final double TO_HZ = 20_000;
  private static final double CLOSE = 1e-8;
  private static final int MOST = 60;

  static LowestOhm of(ChannelChain chain, boolean withCable) {
    Grid grid = chain.grid();
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < grid.size(); k++) {
      double ohm = (withCable ? chain.terminalOhm(k) : chain.networkOhm(k)).modulus();
      if (grid.hz(k) >= FROM_HZ && grid.hz(k) <= TO_HZ && ohm < least) {
        best = k;
        least = ohm;
      }
    }
    DoubleUnaryOperator modulus = f -> chain.ohmAt(f, withCable).modulus();
    double from = Math.max(FROM_HZ, grid.hz(Math.max(0, best - 1)));
    double to = Math.min(TO_HZ, grid.hz(Math.min(grid.size() - 1, best + 1)));
    UnivariatePointValuePair found =
        new BrentOptimizer(CLOSE, CLOSE)
            .optimize(
                new MaxEval(MOST),
                GoalType.MINIMIZE,
                new UnivariateObjectiveFunction(lg -> modulus.applyAsDouble(Math.exp(lg))),
                new SearchInterval(Math.log(from), Math.log(to), Math.log(grid.hz(best))));
    return found.getValue() < least
        ? new LowestOhm(Math.exp(found.getPoint()), found.getValue())
        : new LowestOhm(grid.hz(best), least);
  }
}
