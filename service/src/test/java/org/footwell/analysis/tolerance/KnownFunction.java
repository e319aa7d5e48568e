package org.footwell.analysis.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Functions of the unit cube whose Sobol' indices are published; see {@code sobol-indices.csv}. */
@SuppressWarnings("ImmutableEnumChecker") // functions without a state
enum KnownFunction {
  ISHIGAMI(
      3,
      u -> {
        double x1 = angle(u[0]);
        return Math.sin(x1)
            + 7 * Math.pow(Math.sin(angle(u[1])), 2)
            + 0.1 * Math.pow(angle(u[2]), 4) * Math.sin(x1);
      }),
  G(
      8,
      u -> {
        double[] a = {0, 1, 4.5, 9, 99, 99, 99, 99};
        double product = 1;
        for (int i = 0; i < a.length; i++) {
          product *= (Math.abs(4 * u[i] - 2) + a[i]) / (1 + a[i]);
        }
        return product;
      });

  private final int inputs;
  private final ToDoubleFunction<double[]> function;

  KnownFunction(int inputs, ToDoubleFunction<double[]> function) {
    this.inputs = inputs;
    this.function = function;
  }

  private static double angle(double u) {
    return Math.PI * (2 * u - 1);
  }

  int inputs() {
    return inputs;
  }

  /** First order and total index of an input. */
  List<Estimate> indices(int samples, long seed, int input) {
    double[][] points = SamplePoints.of(samples, 2 * inputs, seed);
    List<double[]> blocks = new ArrayList<>();
    blocks.add(values(points, 0, inputs));
    blocks.add(values(points, inputs, inputs));
    for (int i = 0; i < inputs; i++) {
      blocks.add(i == input ? values(points, 0, input) : new double[0]);
    }
    VarianceShares shares = VarianceShares.of(blocks);
    return List.of(shares.firstOrder(input), shares.total(input));
  }

  /** Values at the points of one set, one input of it taken from the second set. */
  private double[] values(double[][] points, int from, int exchanged) {
    double[] values = new double[points[0].length];
    double[] at = new double[inputs];
    for (int n = 0; n < values.length; n++) {
      for (int i = 0; i < inputs; i++) {
        at[i] = points[i == exchanged ? inputs + i : from + i][n];
      }
      values[n] = function.applyAsDouble(at);
    }
    return values;
  }
}
