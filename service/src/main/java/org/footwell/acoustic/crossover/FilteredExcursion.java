package org.footwell.acoustic.crossover;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.footwell.calculation.Formula;
import org.footwell.parts.Filter;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Octaves;
import org.footwell.physics.Piston;
import org.footwell.physics.ThieleSmall;

/**
 * How far a driver moves behind a high-pass that lets its pass band have a level: the displacement
 * for that level times the driver's own roll-off below its resonance times the filter's skirt.
 *
 * @param sdCm2 cone area
 * @param xmaxMm displacement allowed, one-way peak
 * @param resonanceHz resonance, in its box if it has one
 * @param q total Q there
 * @param levelDbSpl level of a sine at 1 m in half space
 * @param density of air, kg/m³
 */
record FilteredExcursion(
    double sdCm2, double xmaxMm, double resonanceHz, double q, double levelDbSpl, double density) {

  /** Frequency in Hz where a level takes all of xmax, from the displacement at 1 Hz, both in mm. */
  static final Formula.Of2 FULL_LEVEL_FROM =
      Formula.of("full_level_from_hz", "1 Hz·√(x1/xmax)", "Hz", Piston.HALF_SPACE)
          .with("x1", "xmax", (x1, xmax) -> Math.sqrt(x1 / xmax));

  /** What the driver itself does to a level at f Hz, as a ratio: 1 far above its resonance. */
  static final Formula.Of3 OWN_RESPONSE =
      Formula.of("own_response", "v²/√((1 − v²)² + (v/Q)²), v = f/f0", "", ThieleSmall.SMALL_CLOSED)
          .with("f", "f0", "Q", (f, f0, q) -> ownResponse(f / f0, q));

  /** Displacement in mm from that for the level, the driver's response and the filter's. */
  static final Formula.Of3 BEHIND_FILTER =
      Formula.of("displacement_mm", "X·G·H", "mm", Piston.HALF_SPACE)
          .with("X", "G", "H", (x, own, filter) -> x * own * filter);

  private static final int PER_OCTAVE = 8;

  /** Well below the resonance the driver needs no more displacement: the place is above this. */
  private static final double BELOW_RESONANCE = 1 / 16.0;

  private static final double PRECISION = 1e-9;

  /** Logarithm of a frequency at which a skirt of any order is 1 to the precision. */
  private static final double FAR_ABOVE = 25;

  private static double ownResponse(double v, double q) {
    return v * v / Math.hypot(1 - v * v, v / q);
  }

  /** A place on the frequency axis and what is there. */
  record Peak(double frequencyHz, double value) {}

  /** Displacement in mm behind a high-pass at a frequency in Hz. */
  double at(AnalogFilter highPass, double f) {
    return BEHIND_FILTER.at(
        forLevel(f), OWN_RESPONSE.at(f, resonanceHz, q), Math.sqrt(highPass.squaredMagnitude(f)));
  }

  /** The largest displacement behind a high-pass, and its frequency. */
  Peak largest(AnalogFilter highPass) {
    double from = Math.min(resonanceHz, highPass.cornerHz()) * BELOW_RESONANCE;
    double to = Math.max(resonanceHz, highPass.cornerHz()) * 4;
    return peak(f -> at(highPass, f), from, to);
  }

  /**
   * The lowest corner in Hz at which the displacement stays within xmax, or null when it does so
   * without a filter. At each frequency the filter must be down to a ratio; that puts its corner at
   * the frequency over the place on the skirt with that ratio. The highest such corner holds for
   * all.
   */
  Peak lowestCorner(Filter.Kind kind, int order) {
    AnalogFilter skirt = new Filter(kind, order, 1.0, null).highPass();
    double from = resonanceHz * BELOW_RESONANCE;
    // A response with a hump may need displacement a little above where the level alone does.
    double to = FULL_LEVEL_FROM.at(forLevel(1), xmaxMm) * Math.sqrt(1 + q);
    if (to <= from) {
      return null;
    }
    Peak found = peak(f -> cornerFor(skirt, order, f), from, to);
    return found.value() == 0 ? null : found;
  }

  private double cornerFor(AnalogFilter skirt, int order, double f) {
    double allowed = xmaxMm / (forLevel(f) * OWN_RESPONSE.at(f, resonanceHz, q));
    // The skirt comes as close to 1 as this only far above any corner.
    if (allowed > 1 - PRECISION) {
      return 0;
    }
    // Far down the skirt a filter of order n falls with the n-th power: the place is near that.
    double start = Math.log(allowed) / order;
    double wanted = 2 * Math.log(allowed);
    double place =
        new BrentSolver(PRECISION)
            .solve(
                200,
                ln -> Math.log(skirt.squaredMagnitude(Math.exp(ln))) - wanted,
                start - 3,
                FAR_ABOVE);
    return f / Math.exp(place);
  }

  private double forLevel(double f) {
    return Piston.DISPLACEMENT_OF_LEVEL.at(f, sdCm2, levelDbSpl, density);
  }

  /** The largest value of a function between two frequencies: on a grid, then near its best. */
  private static Peak peak(DoubleUnaryOperator function, double from, double to) {
    int steps = (int) Math.ceil(Octaves.between(from, to) * PER_OCTAVE);
    double ratio = Math.pow(to / from, 1.0 / steps);
    double best = from;
    double value = function.applyAsDouble(from);
    for (int i = 1; i <= steps; i++) {
      double here = from * Math.pow(ratio, i);
      double there = function.applyAsDouble(here);
      if (there > value) {
        best = here;
        value = there;
      }
    }
    double nearby =
        new BrentOptimizer(PRECISION, PRECISION)
            .optimize(
                new MaxEval(200),
                GoalType.MAXIMIZE,
                new UnivariateObjectiveFunction(lg -> function.applyAsDouble(Math.exp(lg))),
                new SearchInterval(Math.log(best / ratio), Math.log(best * ratio), Math.log(best)))
            .getPoint();
    double place = Math.exp(nearby);
    double refined = function.applyAsDouble(place);
    return refined > value ? new Peak(place, refined) : new Peak(best, value);
  }
}
