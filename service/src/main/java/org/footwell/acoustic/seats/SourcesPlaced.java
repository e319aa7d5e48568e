package org.footwell.acoustic.seats;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Exact;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.Position;
import org.footwell.parts.Seat;

/** Ways that nobody measured follow from where everything is. */
@Check.Of(
    value = {
      "distances",
      "sources.*.position",
      "seats.*.name",
      "seats.*.position",
      "seats.*.left_ear",
      "seats.*.right_ear"
    },
    says =
        "Without distances every source and every seat has a position, at least 0.05 m from each"
            + " other.")
final class SourcesPlaced implements Check<SeatLevelsRequest> {

  /** Nearer than this nothing is a point source, m; the bound of a measured distance too. */
  private static final double NEAREST_M = 0.05;

  @Override
  public void check(SeatLevelsRequest q, Refusing to) {
    if (q.distances() != null) {
      return;
    }
    boolean all = true;
    for (int i = 0; i < q.sources().size(); i++) {
      all &= given(q.sources().get(i).position(), "/sources/" + i + "/position", to);
    }
    for (int k = 0; k < q.seats().size(); k++) {
      all &= given(q.seats().get(k).head(), "/seats/" + k + "/position", to);
    }
    if (all) {
      farEnough(q, to);
    }
  }

  private static boolean given(Position position, String at, Refusing to) {
    if (position == null) {
      to.refuse(SeatLevelFault.PLACE_MISSING).at(at);
    }
    return position != null;
  }

  private static void farEnough(SeatLevelsRequest q, Refusing to) {
    for (int i = 0; i < q.sources().size(); i++) {
      for (Seat seat : q.seats()) {
        double distance = q.sources().get(i).position().distanceTo(seat.head());
        if (distance < NEAREST_M) {
          to.refuse(SeatLevelFault.SOURCE_TOO_NEAR)
              .at("/sources/" + i + "/position")
              .given(
                  Phrase.of(SeatWords.AWAY_FROM)
                      .own("distance", Exact.given(distance))
                      .own("seat", seat.name()))
              .allowed(Allowed.atLeast(NEAREST_M, "m"));
        }
      }
    }
  }
}
