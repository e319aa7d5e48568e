package org.footwell.acoustic.alignment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.footwell.Answers;
import org.footwell.parts.Filter;
import org.footwell.parts.Position;
import org.footwell.parts.SeatBuilder;
import org.junit.jupiter.api.Test;

class LeastSpreadTest {

  @Test
  void theSpreadIsTheLeastThatTheSimplexMethodFinds() {
    Random random = new Random(1);
    for (int trial = 0; trial < 400; trial++) {
      double[][] metres =
          SeatDelaysProperties.metres(random, 1 + random.nextInt(10), 2 + random.nextInt(5));
      if (trial % 2 == 0) {
        // Half metres, so that many arrivals tie.
        for (double[] row : metres) {
          Arrays.setAll(row, s -> Math.ceil(2 * row[s]) / 2);
        }
      }
      double[] weight = new double[metres[0].length];
      Arrays.setAll(weight, s -> random.nextInt(4) == 0 ? 1 : 0.001 + 3 * random.nextDouble());
      Setup setup = Setup.tape(metres);
      for (int s = 0; s < weight.length; s++) {
        setup.weight(s, weight[s]);
      }
      List<SeatDelaysResult.Seat> seats = setup.result().seats();
      double ours = 0;
      for (int s = 0; s < weight.length; s++) {
        ours += weight[s] * seats.get(s).spreadMs();
      }
      assertEquals(bySimplex(metres, weight), ours, 1e-4 * Arrays.stream(weight).sum());
    }
  }

  /** Least weighted sum of spreads, ms: unknowns are the delays, then per seat both edges. */
  private static double bySimplex(double[][] metres, double[] weight) {
    int channels = metres.length;
    int seats = weight.length;
    double[] goal = new double[channels + 2 * seats];
    List<LinearConstraint> edges = new ArrayList<>();
    for (int s = 0; s < seats; s++) {
      goal[channels + s] = weight[s];
      goal[channels + seats + s] = -weight[s];
      for (int c = 0; c < channels; c++) {
        double arrival = 1000 * metres[c][s] / 343.2;
        edges.add(edge(goal.length, channels + s, c, Relationship.GEQ, arrival));
        edges.add(edge(goal.length, channels + seats + s, c, Relationship.LEQ, arrival));
      }
    }
    return new SimplexSolver()
        .optimize(
            new LinearObjectiveFunction(goal, 0),
            new LinearConstraintSet(edges),
            GoalType.MINIMIZE,
            new NonNegativeConstraint(true))
        .getValue();
  }

  private static LinearConstraint edge(
      int unknowns, int edge, int channel, Relationship relationship, double arrival) {
    double[] coefficients = new double[unknowns];
    coefficients[edge] = 1;
    coefficients[channel] = -1;
    return new LinearConstraint(coefficients, relationship, arrival);
  }

  @Test
  void theLargestRequestIsAnswered() {
    SeatDelaysRequest request = largest(new Random(2));
    assertEquals(32, Answers.of(Setup.CALCULATION, request).result().channels().size());
  }

  /** Of 2·32·16 constraints fewer than a quarter ever become active or are dropped again. */
  @Test
  void theSearchTakesFewMovesAtTheLargestSize() {
    Random random = new Random(2);
    for (int trial = 0; trial < 20; trial++) {
      double[][] metres = SeatDelaysProperties.metres(random, 32, 16);
      double[][] arrivalMs =
          Arrays.stream(metres)
              .map(row -> Arrays.stream(row).map(metre -> 1000 * metre / 343.2).toArray())
              .toArray(double[][]::new);
      double[] weight = random.doubles(16, 0.1, 3).toArray();
      Layout layout = new Layout(metres, weight, IntStream.range(0, 16).toArray());
      AtomicInteger moves = new AtomicInteger();
      assertEquals(
          32, LeastSpread.delaysMs(arrivalMs, layout.weight, moves::incrementAndGet).length);
      assertTrue(moves.get() < 32 * 16 / 2, () -> moves + " moves");
    }
  }

  /** 32 channels with two Bessel filters each, and 8 seats with both ears: 16 points. */
  private static SeatDelaysRequest largest(Random random) {
    Setup setup = new Setup();
    for (int c = 0; c < 32; c++) {
      setup.channel("c" + c, anywhere(random, 0));
      double corner = 20 * Math.pow(1.2, c);
      Filter high = Setup.filter(Filter.Kind.BESSEL, 8, corner);
      Filter low = Setup.filter(Filter.Kind.BESSEL, 8, 1.2 * corner);
      setup.filters(c, high, low, null);
      if (c > 0) {
        setup.crossover("c" + (c - 1), "c" + c, corner);
      }
    }
    for (int s = 0; s < 8; s++) {
      Position left = anywhere(random, 1.1);
      Position right = Setup.at(left.xM(), left.yM() - 0.18, left.zM());
      setup.seats.add(
          SeatBuilder.builder().name("s" + s).weight(0.1 + s).leftEar(left).rightEar(right));
    }
    return setup.request();
  }

  private static Position anywhere(Random random, double height) {
    return Setup.at(
        4 * random.nextDouble() - 2, 1.6 * random.nextDouble() - 0.8, height + random.nextDouble());
  }
}
