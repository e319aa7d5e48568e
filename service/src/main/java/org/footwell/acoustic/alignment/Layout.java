package org.footwell.acoustic.alignment;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.Arrays;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.parts.Position;

/** How far every loudspeaker is from every listening point, and what the points count. */
final class Layout {

  private static final Formula.Of3 DISTANCE =
      Formula.of("distance_m", "√(Δx² + Δy² + Δz²)", "m", DEFINITION)
          .with("Δx", "Δy", "Δz", (x, y, z) -> Math.sqrt(x * x + y * y + z * z));

  /** Metres by channel and point. */
  final double[][] distanceM;

  /** What each point counts; together 1. */
  final double[] weight;

  /** The seat each point belongs to. */
  final int[] seat;

  Layout(double[][] distanceM, double[] weight, int[] seat) {
    this.distanceM = distanceM;
    double sum = Arrays.stream(weight).sum();
    this.weight = Arrays.stream(weight).map(w -> w / sum).toArray();
    this.seat = seat;
  }

  /** How far it is from one place to another, m. */
  static double distanceM(Position from, Position to, Arithmetic steps) {
    return steps.apply(DISTANCE, to.xM() - from.xM(), to.yM() - from.yM(), to.zM() - from.zM());
  }

  int channels() {
    return distanceM.length;
  }

  int points() {
    return weight.length;
  }

  /** Weighted mean over the points of what a channel has at each of them. */
  double mean(double[] atPoints) {
    double sum = 0;
    for (int p = 0; p < weight.length; p++) {
      sum += weight[p] * atPoints[p];
    }
    return sum;
  }
}
