package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.AlignmentFinding.TRIM_DISTANCE_LAW;

import java.util.Arrays;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.physics.Decibels;
import org.footwell.physics.PointSource;

/** How far each channel is turned down so that all are as loud as the quietest. */
final class Trims {

  /** Beyond this the level hardly falls inside a cabin, m (common practice, no source). */
  private static final double CRITICAL_DISTANCE_M = 0.4;

  private static final Formula.Of2 TRIM =
      Formula.of(
              "trim_db", "10·lg(g_least/g), g the mean of 1/d²", "dB", PointSource.INVERSE_SQUARE)
          .with("g_least", "g", (least, own) -> Decibels.ofPower(least / own));

  private Trims() {}

  /** Trims in dB, 0 for the quietest channel and below for the others. */
  static double[] db(Layout layout, Run run) {
    double[] gains = Arrays.stream(layout.distanceM).mapToDouble(d -> gain(d, layout)).toArray();
    double least = Arrays.stream(gains).min().orElseThrow();
    double farthest =
        Arrays.stream(layout.distanceM).flatMapToDouble(Arrays::stream).max().orElseThrow();
    if (gains.length > 1 && farthest > CRITICAL_DISTANCE_M) {
      run.find(TRIM_DISTANCE_LAW).at("/channels").value(farthest).limit(CRITICAL_DISTANCE_M);
    }
    return Arrays.stream(gains).map(gain -> run.apply(TRIM, least, gain)).toArray();
  }

  private static double gain(double[] distances, Layout layout) {
    return layout.mean(Arrays.stream(distances).map(d -> 1 / (d * d)).toArray());
  }
}
