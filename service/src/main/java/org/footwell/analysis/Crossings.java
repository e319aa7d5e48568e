package org.footwell.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Where an output crosses its target between two values of an input that may be any number. The range
 * is looked at in steps; each step that ends on the other side of the target is closed in on by Brent's
 * method, and where the output turns back just before the target, its extreme is looked at first.
 */
final class Crossings {

  /** Steps the range is looked at in. */
  static final int STEPS = 64;

  /** Above 0, and from one end to the other by more than this factor, steps have equal ratios. */
  private static final double WIDE = 10;

  /** How closely a crossing is found, of the range and of the value. */
  private static final double ACCURACY = 1e-13;

  /** An output that changes by more than this share of its range within that has jumped. */
  private static final double JUMP = 1e-6;

  private static final double EXTREME_ACCURACY = 1e-9;
  private static final int MOST_EVALUATIONS = 200;

  private final DoubleFunction<Sample> look;
  private final double target;
  private final Side side;
  private final List<Found> found = new ArrayList<>();
  private final List<Gap> gaps = new ArrayList<>();
  private Samples samples;
  private int iterations;

  /**
   * A crossing.
   *
   * @param here the value taken, on the side that is wanted
   * @param beyond a value next to it on the other side of the target; null where it is met exactly
   */
  record Found(Sample here, Sample beyond) {

    /** Whether the output leaps over the target. */
    boolean jumps(double range) {
      return beyond != null && Math.abs(beyond.output() - here.output()) > JUMP * range;
    }
  }

  /** Two values with outputs on both sides of the target, and between them one that has none. */
  record Gap(Sample before, Sample after) {}

  /** Ends closing in where there is suddenly no output. */
  private static final class Broken extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Broken() {
      super(null, null, false, false);
    }
  }

  private Crossings(DoubleFunction<Sample> look, double target, Side side) {
    this.look = look;
    this.target = target;
    this.side = side;
  }

  static Crossings of(
      double from, double to, double target, Side side, DoubleFunction<Sample> look) {
    Crossings crossings = new Crossings(look, target, side);
    crossings.samples = Samples.of(steps(from, to), look);
    if (!crossings.samples.isConstant()) {
      crossings.closeIn();
    }
    return crossings;
  }

  Samples samples() {
    return samples;
  }

  List<Found> found() {
    return found;
  }

  List<Gap> gaps() {
    return gaps;
  }

  int iterations() {
    return iterations;
  }

  private static DoubleStream steps(double from, double to) {
    boolean ratios = from > 0 && to > WIDE * from;
    return IntStream.rangeClosed(0, STEPS)
        .mapToDouble(
            i ->
                i == STEPS
                    ? to
                    : ratios
                        ? from * Math.pow(to / from, (double) i / STEPS)
                        : from + (to - from) * i / STEPS);
  }

  private void closeIn() {
    List<Sample> points = withExtremes(samples.all());
    int last = -1;
    for (int i = 0; i < points.size(); i++) {
      Sample here = points.get(i);
      if (!here.isKnown()) {
        continue;
      }
      if (here.output() == target) {
        found.add(new Found(here, null));
      } else if (last >= 0 && opposite(points.get(last), here)) {
        if (last < i - 1 || !closeIn(points.get(last), here)) {
          gaps.add(new Gap(points.get(last), here));
        }
      }
      last = i;
    }
  }

  private boolean opposite(Sample one, Sample other) {
    return (one.output() - target) * (other.output() - target) < 0;
  }

  /** The same with an extreme put in where three neighbours come nearer to the target and go away. */
  private List<Sample> withExtremes(List<Sample> all) {
    List<Sample> more = new ArrayList<>(all);
    for (int i = all.size() - 2; i > 0; i--) {
      Sample before = all.get(i - 1);
      Sample here = all.get(i);
      Sample after = all.get(i + 1);
      boolean oneSide =
          before.isKnown()
              && here.isKnown()
              && after.isKnown()
              && !opposite(before, here)
              && !opposite(here, after);
      if (oneSide && off(here) < off(before) && off(here) < off(after)) {
        extreme(before, here, after, more, i);
      }
    }
    return more;
  }

  private void extreme(Sample before, Sample here, Sample after, List<Sample> into, int index) {
    boolean above = here.output() > target;
    try {
      double value =
          new BrentOptimizer(EXTREME_ACCURACY, EXTREME_ACCURACY * (after.value() - before.value()))
              .optimize(
                  new MaxEval(MOST_EVALUATIONS),
                  new UnivariateObjectiveFunction(this::output),
                  above ? GoalType.MINIMIZE : GoalType.MAXIMIZE,
                  new SearchInterval(before.value(), after.value(), here.value()))
              .getPoint();
      Sample extreme = look.apply(value);
      if (opposite(extreme, here) || extreme.output() == target) {
        into.add(value < here.value() ? index : index + 1, extreme);
      }
    } catch (Broken | TooManyEvaluationsException noExtremeToBeHad) {
      // The steps on both sides of it stand as they are.
      return;
    }
  }

  private double off(Sample sample) {
    return Math.abs(sample.output() - target);
  }

  private double output(double value) {
    iterations++;
    Sample sample = look.apply(value);
    if (!sample.isKnown()) {
      throw new Broken();
    }
    return sample.output();
  }

  /** Whether there is an output all the way. */
  private boolean closeIn(Sample low, Sample high) {
    double width = ACCURACY * (high.value() - low.value());
    try {
      double value =
          new BracketingNthOrderBrentSolver(ACCURACY, width, 0, 5)
              .solve(
                  MOST_EVALUATIONS,
                  at -> output(at) - target,
                  low.value(),
                  high.value(),
                  (low.value() + high.value()) / 2,
                  allowed());
      Sample here = look.apply(value);
      found.add(new Found(here, here.output() == target ? null : beyond(here, low, high)));
      return true;
    } catch (Broken | TooManyEvaluationsException nothingToCloseInOn) {
      return false;
    }
  }

  /** A value next to a crossing whose output is on the other side of the target; null if none is. */
  private Sample beyond(Sample here, Sample low, Sample high) {
    double reach = 4 * ACCURACY * (Math.abs(here.value()) + high.value() - low.value());
    for (double value : new double[] {here.value() - reach, here.value() + reach}) {
      Sample next = look.apply(Math.min(Math.max(value, low.value()), high.value()));
      if (next.isKnown() && opposite(here, next)) {
        return next;
      }
    }
    return null;
  }

  private AllowedSolution allowed() {
    return switch (side) {
      case NEAREST -> AllowedSolution.ANY_SIDE;
      case AT_LEAST -> AllowedSolution.ABOVE_SIDE;
      case AT_MOST -> AllowedSolution.BELOW_SIDE;
    };
  }
}
