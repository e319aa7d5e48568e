package org.footwell.acoustic.filters;

import java.util.List;
import java.util.stream.DoubleStream;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;
import org.footwell.signal.CirclePoint;
import org.footwell.signal.Response;

/** All ways added up, as they are or at a listener. */
final class SummedWays {

  static final Source SPHERICAL =
      Source.of(
          "Spherical wave of a point source in free field: pressure and time go with distance");

  /** Path in m of a way to the listener: distance d to its plane, b behind it, h up or down. */
  static final Formula.Of3 PATH =
      Formula.of("path_m", "√((d + b)² + h²)", "m", SPHERICAL)
          .with("d", "b", "h", (d, b, h) -> Math.hypot(d + b, h));

  /** How much later in ms sound comes over a path of r m than over the distance d m. */
  static final Formula.Of3 LATER =
      Formula.of("later_ms", "1000·(r − d)/c", "ms", SPHERICAL)
          .with("r", "d", "c", (r, d, c) -> 1000 * (r - d) / c);

  /** Ways that cancel leave this much less than they would have in phase, or more, dB. */
  static final double DEEPEST_NULL_DB = 60;

  private static final double DEEPEST_NULL = Decibels.toPower(-DEEPEST_NULL_DB);

  /**
   * Something to try against what was given.
   *
   * @param ways indexes of the ways it is tried on, as bits
   * @param polarity -1 to invert them
   * @param delayMs to be added to their delay
   */
  record Change(int ways, int polarity, double delayMs) {
    static final Change NONE = new Change(0, 1, 0);

    static Change inverting(int ways) {
      return new Change(ways, -1, 0);
    }

    private Phasor on(DesignedWay way, double frequencyHz, Phasor gain) {
      if ((ways & way.bit()) == 0) {
        return gain;
      }
      double turn = -2 * Math.PI * frequencyHz * delayMs / 1000;
      return gain.times(new Phasor(polarity * Math.cos(turn), polarity * Math.sin(turn)));
    }
  }

  private final List<DesignedWay> ways;
  private final double rateHz;
  private final Double listenerM;
  private final double speed;

  /**
   * Of some ways.
   *
   * @param listenerM distance of a listener from their plane, m, or null to add them as they are
   * @param speed of sound there, m/s
   */
  SummedWays(List<DesignedWay> ways, double rateHz, Double listenerM, double speed) {
    this.ways = ways;
    this.rateHz = rateHz;
    this.listenerM = listenerM;
    this.speed = speed;
  }

  /** Notes the paths to the reference height. */
  void note(Arithmetic steps) {
    if (listenerM == null) {
      return;
    }
    for (DesignedWay way : ways) {
      double d = listenerM;
      double path = steps.apply(PATH, d, way.behindM(), way.heightM());
      steps.apply(LATER, path, d, speed);
    }
  }

  double rateHz() {
    return rateHz;
  }

  CirclePoint point(double frequencyHz) {
    return CirclePoint.of(frequencyHz, rateHz);
  }

  /** One way as it arrives at a height. */
  Response arriving(DesignedWay way, CirclePoint p, double heightM) {
    if (listenerM == null) {
      return way.at(p);
    }
    double d = listenerM;
    double path = PATH.at(d, way.behindM(), heightM - way.heightM());
    return way.at(p).scaled(d / path, LATER.at(path, d, speed) / 1000 * rateHz, p);
  }

  /** Angle at which the listener's distance is seen up to a height, degrees. */
  double elevationDeg(double heightM) {
    return Math.toDegrees(Math.atan2(heightM, listenerM));
  }

  /** Amplitude that gain and distance give a way at the reference height, whatever its filters. */
  double loudness(DesignedWay way) {
    double gain = Math.abs(way.factor());
    if (listenerM == null) {
      return gain;
    }
    double d = listenerM;
    return gain * d / PATH.at(d, way.behindM(), way.heightM());
  }

  /** All ways at the reference height; for phase and delay, since its level has no floor. */
  Response at(CirclePoint p) {
    return Response.sum(ways.stream().map(way -> arriving(way, p, 0)).toList());
  }

  /** Level of all ways at the reference height, dB. */
  double levelDb(double frequencyHz) {
    return levelDb(frequencyHz, Change.NONE, 0);
  }

  /** Level of all ways, dB; no further than {@link #DEEPEST_NULL_DB} below that in phase. */
  double levelDb(double frequencyHz, Change change, double heightM) {
    CirclePoint p = point(frequencyHz);
    Phasor sum = new Phasor(0, 0);
    double inPhase = 0;
    for (DesignedWay way : ways) {
      Phasor here = arriving(way, p, heightM).gain();
      sum = sum.plus(change.on(way, frequencyHz, here));
      inPhase += Math.hypot(here.re(), here.im());
    }
    double power = sum.re() * sum.re() + sum.im() * sum.im();
    return Response.levelDb(Math.max(power, inPhase * inPhase * DEEPEST_NULL));
  }

  /** Level of one way at the reference height, dB. */
  double levelDb(DesignedWay way, double frequencyHz) {
    return arriving(way, point(frequencyHz), 0).levelDb();
  }

  List<DesignedWay> ways() {
    return ways;
  }

  /** Frequencies of all sections: where something narrow may be. */
  double[] narrow() {
    return ways.stream()
        .flatMapToDouble(
            way ->
                way.parts().stream().flatMapToDouble(part -> DoubleStream.of(part.frequencyHz())))
        .toArray();
  }
}
