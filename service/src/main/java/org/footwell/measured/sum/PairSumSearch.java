package org.footwell.measured.sum;

import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.footwell.calculation.Arithmetic;
import org.footwell.measured.sum.LoudspeakerSumResult.Sum;

/** Tries delays and polarities of the upper channel. */
final class PairSumSearch {

  /** Delays tried within a period of the upper end of the band. */
  private static final int STEPS_IN_PERIOD = 24;

  /** A delay must gain this against none, dB. */
  private static final double WORTH_DB = 0.05;

  private final PairSum sum;
  private final Arithmetic arithmetic;

  PairSumSearch(PairSum sum, Arithmetic arithmetic) {
    this.sum = sum;
    this.arithmetic = arithmetic;
  }

  /** The delay within a range either way that loses least, ms; none unless it is worth it. */
  Sum best(int polarity, double rangeMs) {
    double period = 1000 / sum.highestHz();
    int steps = Math.max(1, (int) Math.ceil(rangeMs / period * STEPS_IN_PERIOD));
    double step = rangeMs / steps;
    Sum none = sum.trial(0, polarity);
    Sum best = none;
    for (int i = -steps; i <= steps; i++) {
      arithmetic.checkDeadline();
      Sum here = sum.trial(i * step, polarity);
      best = here.lossDb() > best.lossDb() ? here : best;
    }
    double from = Math.max(-rangeMs, best.delayMs() - step);
    double to = Math.min(rangeMs, best.delayMs() + step);
    double refined =
        new BrentOptimizer(1e-7, 1e-9)
            .optimize(
                new MaxEval(200),
                new UnivariateObjectiveFunction(d -> sum.trial(d, polarity).lossDb()),
                GoalType.MAXIMIZE,
                new SearchInterval(from, to))
            .getPoint();
    Sum exact = sum.trial(refined, polarity);
    best = exact.lossDb() > best.lossDb() ? exact : best;
    return best.lossDb() > none.lossDb() + WORTH_DB ? best : none;
  }
}
