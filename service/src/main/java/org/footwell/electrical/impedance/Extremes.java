package org.footwell.electrical.impedance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;
import org.footwell.calculation.Arithmetic;
import org.footwell.physics.Impedance;

/**
 * Peaks, dips and the two ends of a curve over a range of frequencies.
 *
 * <p>The curve is looked at on a fine logarithmic grid; what stands out there is then found exactly.
 * The curves here are made of resonances whose skirts are much wider than the grid, so none slips
 * through.
 *
 * @param peaks local maxima within the range, not its ends, rising in frequency
 * @param dips local minima likewise
 * @param lowest the lowest place of all, ends included
 * @param highest the highest place of all, ends included
 */
public record Extremes(List<Place> peaks, List<Place> dips, Place lowest, Place highest) {

  private static final int PER_OCTAVE = 48;

  /** A frequency in Hz and the curve there. */
  public record Place(double frequencyHz, double value) {
    ModulusPoint modulus() {
      return new ModulusPoint(frequencyHz, value);
    }
  }

  /** The extremes of a modulus in ohm. */
  public static Extremes ofModulus(
      Impedance impedance, double fromHz, double toHz, Arithmetic arithmetic) {
    return of(f -> impedance.at(f).modulus(), fromHz, toHz, arithmetic);
  }

  public static Extremes of(
      DoubleUnaryOperator curve, double fromHz, double toHz, Arithmetic arithmetic) {
    double[] frequencies = grid(fromHz, toHz);
    return of(curve, frequencies, Arrays.stream(frequencies).map(curve).toArray(), arithmetic);
  }

  /**
   * The extremes of a curve that is known on a {@link #grid} already.
   *
   * @param values the curve at the frequencies
   */
  public static Extremes of(
      DoubleUnaryOperator curve, double[] frequencies, double[] values, Arithmetic arithmetic) {
    arithmetic.checkDeadline();
    List<Place> peaks = new ArrayList<>();
    List<Place> dips = new ArrayList<>();
    int last = values.length - 1;
    for (int i = 1; i < last; i++) {
      if (values[i] > values[i - 1] && values[i] >= values[i + 1]) {
        peaks.add(exact(curve, frequencies, i, GoalType.MAXIMIZE));
      } else if (values[i] < values[i - 1] && values[i] <= values[i + 1]) {
        dips.add(exact(curve, frequencies, i, GoalType.MINIMIZE));
      }
    }
    List<Place> all = new ArrayList<>(peaks);
    all.addAll(dips);
    all.add(new Place(frequencies[0], values[0]));
    all.add(new Place(frequencies[last], values[last]));
    Place lowest = all.get(0);
    Place highest = all.get(0);
    for (Place place : all) {
      lowest = place.value() < lowest.value() ? place : lowest;
      highest = place.value() > highest.value() ? place : highest;
    }
    return new Extremes(List.copyOf(peaks), List.copyOf(dips), lowest, highest);
  }

  /**
   * The lowest place of all, ends included, of a curve that is known at some frequencies, rising: beside
   * the lowest of them exactly.
   */
  public static Place lowest(DoubleUnaryOperator curve, double[] frequencies, double[] values) {
    int least = 0;
    for (int i = 1; i < values.length; i++) {
      least = values[i] < values[least] ? i : least;
    }
    return least == 0 || least == values.length - 1
        ? new Place(frequencies[least], values[least])
        : exact(curve, frequencies, least, GoalType.MINIMIZE);
  }

  /** Both ends exactly, and {@value #PER_OCTAVE} or more to the octave between them. */
  public static double[] grid(double fromHz, double toHz) {
    double octaves = Math.log(toHz / fromHz) / Math.log(2);
    int steps = Math.max(8, (int) Math.ceil(octaves * PER_OCTAVE));
    double ratio = Math.pow(toHz / fromHz, 1.0 / steps);
    double[] grid = new double[steps + 1];
    double f = fromHz;
    for (int i = 0; i < steps; i++, f *= ratio) {
      grid[i] = f;
    }
    grid[steps] = toHz;
    return grid;
  }

  private static Place exact(DoubleUnaryOperator curve, double[] f, int i, GoalType goal) {
    UnivariatePointValuePair found =
        new BrentOptimizer(1e-9, 1e-12)
            .optimize(
                new MaxEval(200),
                new UnivariateObjectiveFunction(
                    logarithm -> curve.applyAsDouble(Math.exp(logarithm))),
                goal,
                new SearchInterval(Math.log(f[i - 1]), Math.log(f[i + 1]), Math.log(f[i])));
    return new Place(Math.exp(found.getPoint()), found.getValue());
  }
}
