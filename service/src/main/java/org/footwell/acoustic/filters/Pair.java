package org.footwell.acoustic.filters;

import java.util.Arrays;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;
import org.footwell.calculation.Arithmetic;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;
import org.footwell.signal.CirclePoint;

/**
 * Two ways over a band, to be tried with other polarities and delays. Their gains and distances are
 * evened out: what is judged is how their phases fit, and a step of level would blur it.
 */
final class Pair {

  /** Delays that are tried within half a period either way. */
  private static final int STEPS = 100;

  /** Less is no reason to invert a way besides, or to go for a long delay, dB; common practice. */
  private static final double UNASKED_DB = 0.5;

  private final double[] frequencies;
  private final Phasor[] lower;
  private final Phasor[] upper;

  Pair(SummedWays sum, DesignedWay lower, DesignedWay upper, double[] frequencies) {
    this.frequencies = frequencies;
    this.lower = new Phasor[frequencies.length];
    this.upper = new Phasor[frequencies.length];
    double evenLower = 1 / sum.loudness(lower);
    double evenUpper = 1 / sum.loudness(upper);
    for (int i = 0; i < frequencies.length; i++) {
      CirclePoint p = sum.point(frequencies[i]);
      this.lower[i] = sum.arriving(lower, p, 0).gain().times(evenLower);
      this.upper[i] = sum.arriving(upper, p, 0).gain().times(evenUpper);
    }
  }

  /** How flat a delay of the upper way sums, which is inverted when the polarity is −1. */
  record Trial(double delayMs, int polarity, double spreadDb) {
    Trial orFlatter(Trial other, double byDb) {
      return other.spreadDb < spreadDb - byDb ? other : this;
    }
  }

  /** Highest minus lowest level, at most {@link LevelRange#DEEPEST_DB}. */
  Trial trial(double delayMs, int polarity) {
    double highest = 0;
    double lowest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < frequencies.length; i++) {
      double turn = -2 * Math.PI * frequencies[i] * delayMs / 1000;
      double c = polarity * Math.cos(turn);
      double s = polarity * Math.sin(turn);
      double re = lower[i].re() + upper[i].re() * c - upper[i].im() * s;
      double im = lower[i].im() + upper[i].re() * s + upper[i].im() * c;
      double power = re * re + im * im;
      highest = Math.max(highest, power);
      lowest = Math.min(lowest, power);
    }
    double deepest = highest * Decibels.toPower(-LevelRange.DEEPEST_DB);
    return new Trial(delayMs, polarity, Decibels.ofPower(highest / Math.max(lowest, deepest)));
  }

  /**
   * The flattest; as it is, or only inverted, unless a delay gains more than {@code byDb}. Delays
   * are tried within half a period of the crossing either way: around none, and around the one that
   * lets both ways arrive together where that is farther away.
   *
   * @param togetherMs delay of the upper way that makes both group delays equal
   */
  Trial flattest(double crossingHz, double togetherMs, double byDb, Arithmetic steps) {
    steps.checkDeadline();
    double half = 500 / crossingHz;
    Trial best = around(0, half);
    if (Math.abs(togetherMs) > half) {
      best = best.orFlatter(around(togetherMs, half), UNASKED_DB);
    }
    return trial(0, 1).orFlatter(trial(0, -1), byDb).orFlatter(best, byDb);
  }

  /** The flattest delay around one; inverted only if that is worth it. */
  private Trial around(double middleMs, double halfMs) {
    return flattest(middleMs, halfMs, 1).orFlatter(flattest(middleMs, halfMs, -1), UNASKED_DB);
  }

  private Trial flattest(double middleMs, double halfMs, int polarity) {
    double step = halfMs / STEPS;
    Trial best = trial(middleMs, polarity);
    for (int i = -STEPS; i <= STEPS; i++) {
      best = best.orFlatter(trial(middleMs + i * step, polarity), 0);
    }
    return refined(best, step);
  }

  private Trial refined(Trial near, double step) {
    UnivariatePointValuePair found =
        new BrentOptimizer(1e-6, 1e-9)
            .optimize(
                new MaxEval(200),
                new UnivariateObjectiveFunction(d -> trial(d, near.polarity()).spreadDb()),
                GoalType.MINIMIZE,
                new SearchInterval(near.delayMs() - step, near.delayMs() + step, near.delayMs()));
    return near.orFlatter(trial(found.getPoint(), near.polarity()), 0);
  }

  /** A band with a frequency of its own in it. */
  static double[] with(double[] grid, double frequencyHz) {
    double[] all = Arrays.copyOf(grid, grid.length + 1);
    all[grid.length] = frequencyHz;
    Arrays.sort(all);
    return all;
  }
}
