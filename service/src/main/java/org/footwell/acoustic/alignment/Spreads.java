package org.footwell.acoustic.alignment;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.Arrays;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;

/** Arrivals at the listening points, and how far they spread, for any speed of sound. */
final class Spreads {

  /** Travel time in ms over d metres at c m/s. */
  static final Formula.Of2 TRAVEL =
      Formula.of("travel_ms", "1000·d/c", "ms", DEFINITION).with("d", "c", (d, c) -> 1000 * d / c);

  private static final Formula.Of3 DRIFT =
      Formula.of("drift_ms", "1000·Δd·(1/c_cold − 1/c_hot)", "ms", DEFINITION)
          .with("Δd", "c_cold", "c_hot", (d, cold, hot) -> 1000 * d * (1 / cold - 1 / hot));

  private final Layout layout;

  /** Delay in the chain of each channel, ms: what the temperature does not change. */
  private final double[] fixedMs;

  Spreads(Layout layout, double[] fixedMs) {
    this.layout = layout;
    this.fixedMs = fixedMs;
  }

  /** Arrivals before any delay is added, ms by channel and point. */
  double[][] arrivalsMs(double speed, Run run) {
    double[][] arrivals = new double[layout.channels()][layout.points()];
    for (int c = 0; c < arrivals.length; c++) {
      for (int p = 0; p < arrivals[c].length; p++) {
        arrivals[c][p] = run.apply(TRAVEL, layout.distanceM[c][p], speed) + fixedMs[c];
      }
    }
    return arrivals;
  }

  /** Largest minus smallest arrival at the worst point of each seat, ms, with delays set. */
  double[] bySeatMs(double speed, double[] addedMs, int seats) {
    double[] worst = new double[seats];
    for (int p = 0; p < layout.points(); p++) {
      double[] arrivals = new double[layout.channels()];
      for (int c = 0; c < arrivals.length; c++) {
        arrivals[c] = TRAVEL.at(layout.distanceM[c][p], speed) + fixedMs[c] + addedMs[c];
      }
      worst[layout.seat[p]] = Math.max(worst[layout.seat[p]], range(arrivals));
    }
    return worst;
  }

  /** Largest change between two speeds of sound of the time between two arrivals, ms. */
  double driftMs(double cold, double hot, Run run) {
    double widest = 0;
    for (int p = 0; p < layout.points(); p++) {
      int point = p;
      widest =
          Math.max(
              widest, range(Arrays.stream(layout.distanceM).mapToDouble(d -> d[point]).toArray()));
    }
    return run.apply(DRIFT, widest, cold, hot);
  }

  private static double range(double[] values) {
    return Arrays.stream(values).max().orElse(0) - Arrays.stream(values).min().orElse(0);
  }
}
