package org.footwell.acoustic.enclosure.radiator;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;
import org.footwell.loudspeaker.Radiator;
import org.footwell.loudspeaker.Radiator.State;

/**
 * A radiator looked at on a fine logarithmic grid; what stands out there is then found exactly. Its
 * resonances are much wider than the grid, so none slips through.
 */
public final class Survey {

  private static final int PER_OCTAVE = 24;
  private static final int SOLVER_STEPS = 200;
  private static final double ACCURACY = 1e-11;

  private final Radiator radiator;
  private final double[] frequencies;
  private final State[] states;

  /** Looks at a range in Hz, both ends included. */
  public Survey(Radiator radiator, double fromHz, double toHz) {
    this.radiator = radiator;
    int steps = Math.max(8, (int) Math.ceil(PER_OCTAVE * Math.log(toHz / fromHz) / Math.log(2)));
    frequencies = new double[steps + 1];
    states = new State[steps + 1];
    for (int i = 0; i <= steps; i++) {
      frequencies[i] = i == steps ? toHz : fromHz * Math.pow(toHz / fromHz, (double) i / steps);
      states[i] = radiator.at(frequencies[i]);
    }
  }

  /** Something of a state, at its frequency in Hz. */
  @FunctionalInterface
  public interface Quantity {
    double of(double frequencyHz, State state);
  }

  /** A frequency in Hz and the quantity there. */
  public record Summit(double frequencyHz, double value) {}

  /** Where the quantity is largest from a frequency on, the ends included. */
  public Summit highest(Quantity quantity, double fromHz) {
    int best = -1;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < states.length; i++) {
      double value = quantity.of(frequencies[i], states[i]);
      if (frequencies[i] >= fromHz && value > most) {
        best = i;
        most = value;
      }
    }
    Summit start = new Summit(fromHz, quantity.of(fromHz, radiator.at(fromHz)));
    if (best < 0 || start.value() > most) {
      return start;
    }
    Summit onGrid = new Summit(frequencies[best], most);
    boolean atAnEnd = best == 0 || best == states.length - 1 || frequencies[best - 1] < fromHz;
    Summit found = atAnEnd ? onGrid : refined(quantity, best);
    return found.value() > most ? found : onGrid;
  }

  public Summit highest(Quantity quantity) {
    return highest(quantity, frequencies[0]);
  }

  /** The highest frequency, up to a limit, at which the quantity still reaches a threshold. */
  public OptionalDouble lastReaching(Quantity quantity, double threshold, double upToHz) {
    int last = states.length - 1;
    for (int i = last; i >= 0; i--) {
      if (frequencies[i] > upToHz || quantity.of(frequencies[i], states[i]) < threshold) {
        continue;
      }
      double next = Math.min(upToHz, frequencies[Math.min(last, i + 1)]);
      return OptionalDouble.of(crossing(quantity, threshold, frequencies[i], next));
    }
    return OptionalDouble.empty();
  }

  private double crossing(Quantity quantity, double threshold, double reaching, double beyond) {
    DoubleUnaryOperator over = f -> quantity.of(f, radiator.at(f)) - threshold;
    if (beyond <= reaching || over.applyAsDouble(beyond) >= 0) {
      return beyond;
    }
    if (over.applyAsDouble(reaching) <= 0) {
      return reaching;
    }
    return new BrentSolver(ACCURACY, ACCURACY)
        .solve(SOLVER_STEPS, over::applyAsDouble, reaching, beyond);
  }

  private Summit refined(Quantity quantity, int i) {
    UnivariatePointValuePair found =
        new BrentOptimizer(1e-9, 1e-12)
            .optimize(
                new MaxEval(SOLVER_STEPS),
                new UnivariateObjectiveFunction(
                    logarithm -> {
                      double f = Math.exp(logarithm);
                      return quantity.of(f, radiator.at(f));
                    }),
                GoalType.MAXIMIZE,
                new SearchInterval(
                    Math.log(frequencies[i - 1]),
                    Math.log(frequencies[i + 1]),
                    Math.log(frequencies[i])));
    return new Summit(Math.exp(found.getPoint()), found.getValue());
  }
}
