package org.footwell.acoustic.seats;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.footwell.parts.LevelAt;
import org.footwell.physics.Octaves;
import org.footwell.physics.ThirdOctaves;

/** The target curve over frequency. */
final class Target {

  private static final double REFERENCE_HZ = 1000;

  /** Slack for rounding errors at the ends of the curve. */
  private static final double SLACK = 1e-9;

  private final List<LevelAt> points;
  private final DoubleUnaryOperator line;

  private Target(List<LevelAt> points, DoubleUnaryOperator line) {
    this.points = points;
    this.line = line;
  }

  /** Straight between points, and nothing beyond them or without any. */
  static Target through(List<LevelAt> points) {
    return new Target(points, null);
  }

  /** A line everywhere, by its level at 1 kHz in dB SPL and what it rises by in an octave, dB. */
  static Target tilted(double levelDbSpl, double slopeDbPerOctave) {
    return new Target(
        List.of(), f -> levelDbSpl + slopeDbPerOctave * Octaves.between(REFERENCE_HZ, f));
  }

  boolean given() {
    return !points.isEmpty() || line != null;
  }

  /** Whether there is a level at a frequency. */
  boolean covers(double frequency) {
    return line != null
        || (!points.isEmpty()
            && frequency >= hz(points.get(0)) * (1 - SLACK)
            && frequency <= hz(points.get(points.size() - 1)) * (1 + SLACK));
  }

  /** Level of the third octave at a frequency, dB SPL; null where there is none. */
  Double at(double frequency) {
    if (line != null) {
      return line.applyAsDouble(frequency);
    }
    return covers(frequency) ? between(frequency) : null;
  }

  private double between(double frequency) {
    int above = 1;
    while (above < points.size() - 1 && hz(points.get(above)) < frequency) {
      above++;
    }
    LevelAt left = points.get(above - 1);
    LevelAt right = points.get(above);
    double width = Math.log(hz(right) / hz(left));
    double part = width == 0 ? 1 : Math.log(frequency / hz(left)) / width;
    double within = Math.max(0, Math.min(1, part));
    return left.levelDb() + within * (right.levelDb() - left.levelDb());
  }

  /** Bands are taken at exact frequencies, so points at nominal ones are meant there too. */
  private static double hz(LevelAt point) {
    return ThirdOctaves.exactHz(point.frequencyHz());
  }
}
