package org.footwell.measured.sum;

import java.util.List;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.footwell.calculation.Run;
import org.footwell.physics.Decibels;

/** Tries delays and polarities of the upper channel. */
final class PairSumSearch {

  /** Deeper is a hole, dB. */
  static final double DEEPEST_DB = -100;

  /** Delays tried within a period of the upper end of the band. */
  private static final int STEPS_IN_PERIOD = 24;

  /** A delay must gain this against none, dB. */
  private static final double WORTH_DB = 0.05;

  private final List<PairOfResponses> positions;
  private final double[] frequencies;
  private final Run run;

  PairSumSearch(List<PairOfResponses> positions, double[] frequencies, Run run) {
    this.positions = positions;
    this.frequencies = frequencies;
    this.run = run;
  }

  LoudspeakerSumResult.Sum trial(double delayMs, int polarity) {
    return new LoudspeakerSumResult.Sum(delayMs, polarity, lossDb(positions, delayMs, polarity));
  }

  /** Power of the sum against that of both in phase, over band and positions, dB. */
  double lossDb(List<PairOfResponses> some, double delayMs, int polarity) {
    double sum = 0;
    double inPhase = 0;
    for (int i = 0; i < frequencies.length; i++) {
      double turn = -2 * Math.PI * frequencies[i] * delayMs / 1000;
      for (PairOfResponses one : some) {
        sum += one.weight() * one.sumPower(i, polarity, turn);
        inPhase += one.weight() * one.inPhasePower(i);
      }
    }
    double ratio = Math.max(sum / inPhase, Decibels.toPower(DEEPEST_DB));
    return Math.min(0, Decibels.ofPower(ratio));
  }

  /** The delay within a range either way that loses least, ms; none unless it is worth it. */
  LoudspeakerSumResult.Sum best(int polarity, double rangeMs) {
    double period = 1000 / frequencies[frequencies.length - 1];
    int steps = Math.max(1, (int) Math.ceil(rangeMs / period * STEPS_IN_PERIOD));
    double step = rangeMs / steps;
    LoudspeakerSumResult.Sum none = trial(0, polarity);
    LoudspeakerSumResult.Sum best = none;
    for (int i = -steps; i <= steps; i++) {
      run.checkDeadline();
      LoudspeakerSumResult.Sum here = trial(i * step, polarity);
      best = here.lossDb() > best.lossDb() ? here : best;
    }
    double from = Math.max(-rangeMs, best.delayMs() - step);
    double to = Math.min(rangeMs, best.delayMs() + step);
    double refined =
        new BrentOptimizer(1e-7, 1e-9)
            .optimize(
                new MaxEval(200),
                new UnivariateObjectiveFunction(d -> lossDb(positions, d, polarity)),
                GoalType.MAXIMIZE,
                new SearchInterval(from, to))
            .getPoint();
    LoudspeakerSumResult.Sum exact = trial(refined, polarity);
    best = exact.lossDb() > best.lossDb() ? exact : best;
    return best.lossDb() > none.lossDb() + WORTH_DB ? best : none;
  }
}
