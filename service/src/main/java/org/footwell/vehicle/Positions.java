package org.footwell.vehicle;

import java.util.Collection;
import java.util.List;
import org.footwell.acoustic.alignment.SeatDelaysRequest.Seat;
import org.footwell.parts.Position;

/** Where things are. */
final class Positions {

  private Positions() {}

  static double distance(Position a, Position b) {
    double dx = a.xM() - b.xM();
    double dy = a.yM() - b.yM();
    double dz = a.zM() - b.zM();
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  static Position middle(Collection<Position> all) {
    double n = all.size();
    return new Position(
        all.stream().mapToDouble(Position::xM).sum() / n,
        all.stream().mapToDouble(Position::yM).sum() / n,
        all.stream().mapToDouble(Position::zM).sum() / n);
  }

  /** Largest distance between any two. */
  static double extent(Collection<Position> all) {
    double largest = 0;
    for (Position a : all) {
      for (Position b : all) {
        largest = Math.max(largest, distance(a, b));
      }
    }
    return largest;
  }

  /** The midpoint between the ears, however the seat gives them. */
  static Position head(Seat seat) {
    return seat.position() != null
        ? seat.position()
        : middle(List.of(seat.leftEar(), seat.rightEar()));
  }
}
