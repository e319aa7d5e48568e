package org.footwell.seatlevel;

import java.util.List;
import org.footwell.seatlevel.SeatLevelsRequest.TargetPoint;
import org.footwell.seatlevel.SeatLevelsRequest.Tilt;

/** The target curve over frequency. */
final class Target {

  private static final double REFERENCE_HZ = 1000;

  /** Points given at nominal frequencies lie within this of the exact ones. */
  private static final double NOMINAL_WITHIN = 0.01;

  private final List<TargetPoint> points;
  private final Tilt tilt;

  Target(SeatLevelsRequest q) {
    this.points = q.target();
    this.tilt = q.tilt();
  }

  boolean given() {
    return points != null || tilt != null;
  }

  /** Level of the third octave at a frequency, dB SPL; null where there is none. */
  Double at(double frequency) {
    if (tilt != null) {
      double octaves = Math.log(frequency / REFERENCE_HZ) / Math.log(2);
      return tilt.levelDbSpl() + tilt.slopeDbPerOctave() * octaves;
    }
    return points == null ? null : between(frequency);
  }

  private Double between(double frequency) {
    TargetPoint first = points.get(0);
    TargetPoint last = points.get(points.size() - 1);
    if (frequency < first.frequencyHz() * (1 - NOMINAL_WITHIN)
        || frequency > last.frequencyHz() * (1 + NOMINAL_WITHIN)) {
      return null;
    }
    int above = 1;
    while (above < points.size() - 1 && points.get(above).frequencyHz() < frequency) {
      above++;
    }
    TargetPoint left = points.get(above - 1);
    TargetPoint right = points.get(above);
    double part =
        Math.log(frequency / left.frequencyHz())
            / Math.log(right.frequencyHz() / left.frequencyHz());
    double within = Math.max(0, Math.min(1, part));
    return left.levelDbSpl() + within * (right.levelDbSpl() - left.levelDbSpl());
  }
}
