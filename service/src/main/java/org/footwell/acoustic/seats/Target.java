package org.footwell.acoustic.seats;

import java.util.List;
import org.footwell.acoustic.seats.SeatLevelsRequest.TargetPoint;
import org.footwell.acoustic.seats.SeatLevelsRequest.Tilt;
import org.footwell.physics.Octaves;
import org.footwell.physics.ThirdOctaves;

/** The target curve over frequency. */
final class Target {

  private static final double REFERENCE_HZ = 1000;

  /** Slack for rounding errors at the ends of the curve. */
  private static final double SLACK = 1e-9;

  private final List<TargetPoint> points;
  private final Tilt tilt;

  Target(SeatLevelsRequest q) {
    this.points = q.target();
    this.tilt = q.tilt();
  }

  boolean given() {
    return points != null || tilt != null;
  }

  /** Whether there is a level at a frequency. */
  boolean covers(double frequency) {
    return tilt != null
        || (points != null
            && frequency >= hz(points.get(0)) * (1 - SLACK)
            && frequency <= hz(points.get(points.size() - 1)) * (1 + SLACK));
  }

  /** Level of the third octave at a frequency, dB SPL; null where there is none. */
  Double at(double frequency) {
    if (tilt != null) {
      double octaves = Octaves.between(REFERENCE_HZ, frequency);
      return tilt.levelDbSpl() + tilt.slopeDbPerOctave() * octaves;
    }
    return covers(frequency) ? between(frequency) : null;
  }

  private double between(double frequency) {
    int above = 1;
    while (above < points.size() - 1 && hz(points.get(above)) < frequency) {
      above++;
    }
    TargetPoint left = points.get(above - 1);
    TargetPoint right = points.get(above);
    double width = Math.log(hz(right) / hz(left));
    double part = width == 0 ? 1 : Math.log(frequency / hz(left)) / width;
    double within = Math.max(0, Math.min(1, part));
    return left.levelDbSpl() + within * (right.levelDbSpl() - left.levelDbSpl());
  }

  /** Bands are taken at exact frequencies, so points at nominal ones are meant there too. */
  private static double hz(TargetPoint point) {
    return ThirdOctaves.exactHz(point.frequencyHz());
  }
}
