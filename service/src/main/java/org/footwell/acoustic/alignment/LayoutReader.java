package org.footwell.acoustic.alignment;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.footwell.acoustic.alignment.SeatDelaysRequest.Distance;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.parts.Position;
import org.footwell.parts.Seat;

/** Reads where everything is: from positions, from a tape measure, or from measured arrivals. */
final class LayoutReader {

  private static final Formula.Of3 HEARD_PATH =
      Formula.of("distance_m", "(t − t_chain)·c/1000", "m", DEFINITION)
          .with("t", "t_chain", "c", (t, chain, c) -> (t - chain) * c / 1000);

  private LayoutReader() {}

  /** Of a request whose positions, distances or arrivals are complete. */
  static Layout of(SeatDelaysRequest q, double speed, Run run) {
    if (q.arrivals() != null) {
      return ofArrivals(q, speed, run);
    }
    return q.distances() == null ? ofPositions(q, run) : ofDistances(q, new Roster(q));
  }

  /** Paths as long as the arrivals say, less the chain; a latency of all channels stays in them. */
  private static Layout ofArrivals(SeatDelaysRequest q, double speed, Run run) {
    double[][] paths = new Arrivals(q).bySeatMs(run);
    for (int c = 0; c < paths.length; c++) {
      double chain = q.channels().get(c).chainDelayMs();
      for (int s = 0; s < paths[c].length; s++) {
        paths[c][s] = run.apply(HEARD_PATH, paths[c][s], chain, speed);
      }
    }
    return bySeat(paths, q);
  }

  private static Layout bySeat(double[][] metres, SeatDelaysRequest q) {
    return new Layout(
        metres,
        q.seats().stream().mapToDouble(Seat::weight).toArray(),
        IntStream.range(0, q.seats().size()).toArray());
  }

  private static Layout ofDistances(SeatDelaysRequest q, Roster roster) {
    double[][] distances = new double[q.channels().size()][q.seats().size()];
    for (Distance tape : q.distances()) {
      distances[roster.channel(tape.channel())][roster.seat(tape.seat())] = tape.distanceM();
    }
    return bySeat(distances, q);
  }

  /** Where it is heard at a seat: at the head, or at the ears. */
  static List<Position> points(Seat seat) {
    return seat.position() != null
        ? List.of(seat.position())
        : Stream.of(seat.leftEar(), seat.rightEar()).filter(Objects::nonNull).toList();
  }

  private static Layout ofPositions(SeatDelaysRequest q, Run run) {
    List<Position> points = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    List<Integer> seats = new ArrayList<>();
    for (int i = 0; i < q.seats().size(); i++) {
      Seat seat = q.seats().get(i);
      List<Position> here = points(seat);
      for (Position point : here) {
        points.add(point);
        weights.add(seat.weight() / here.size());
        seats.add(i);
      }
    }
    double[][] distances = new double[q.channels().size()][points.size()];
    for (int c = 0; c < distances.length; c++) {
      for (int p = 0; p < points.size(); p++) {
        distances[c][p] = Layout.distanceM(q.channels().get(c).position(), points.get(p), run);
      }
    }
    return new Layout(
        distances,
        weights.stream().mapToDouble(Double::doubleValue).toArray(),
        seats.stream().mapToInt(Integer::intValue).toArray());
  }
}
