package org.footwell.filters;

import java.util.List;
import java.util.stream.DoubleStream;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.filters.CrossoverFiltersRequest.Listening;
import org.footwell.physics.Air;
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

  /** No way. */
  static final int NONE = -1;

  private final List<DesignedWay> ways;
  private final double rateHz;
  private final Listening listening;
  private final double speed;

  SummedWays(List<DesignedWay> ways, CrossoverFiltersRequest q, Run run) {
    this.ways = ways;
    this.rateHz = q.rateHz();
    this.listening = q.listening();
    this.speed = listening == null ? 0 : run.apply(Air.SPEED_OF_SOUND, listening.temperatureC());
  }

  /** Notes the paths to the reference height. */
  void note(Run run) {
    if (listening == null) {
      return;
    }
    for (DesignedWay way : ways) {
      double d = listening.distanceM();
      double path = run.apply(PATH, d, way.way().behindM(), way.way().heightM());
      run.apply(LATER, path, d, speed);
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
    if (listening == null) {
      return way.at(p);
    }
    double d = listening.distanceM();
    double path = PATH.at(d, way.way().behindM(), heightM - way.way().heightM());
    return way.at(p).scaled(d / path, LATER.at(path, d, speed) / 1000 * rateHz, p);
  }

  /** Amplitude that gain and distance give a way at the reference height, whatever its filters. */
  double loudness(DesignedWay way) {
    double gain = Math.abs(way.factor());
    if (listening == null) {
      return gain;
    }
    double d = listening.distanceM();
    return gain * d / PATH.at(d, way.way().behindM(), way.way().heightM());
  }

  /** All ways at the reference height. */
  Response at(CirclePoint p) {
    return Response.sum(ways.stream().map(way -> arriving(way, p, 0)).toList());
  }

  /** Level of all ways at the reference height, dB. */
  double levelDb(double frequencyHz) {
    return levelDb(frequencyHz, NONE, 0);
  }

  /**
   * Level of all ways, dB.
   *
   * @param inverted index of the way that is inverted against what was given, or {@link #NONE}
   */
  double levelDb(double frequencyHz, int inverted, double heightM) {
    CirclePoint p = point(frequencyHz);
    Phasor sum = new Phasor(0, 0);
    for (DesignedWay way : ways) {
      Phasor here = arriving(way, p, heightM).gain();
      sum = sum.plus(way.index() == inverted ? here.times(-1) : here);
    }
    return new Response(sum, 0, 0).levelDb();
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
