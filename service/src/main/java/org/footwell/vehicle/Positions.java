package org.footwell.vehicle;

import java.util.Collection;
import org.footwell.parts.Position;

/** Where things are. */
final class Positions {

  private Positions() {}

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
        largest = Math.max(largest, a.distanceTo(b));
      }
    }
    return largest;
  }
}
