package org.footwell.acoustic.seats;

import java.util.HashSet;
import java.util.Set;
import org.footwell.acoustic.seats.Paths.Way;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Given;
import org.footwell.parts.Seat;

/** Where one way was measured by tape, all were. */
@Check.Of(
    value = {"distances.*.source", "distances.*.seat", "sources.*.name", "seats.*.name"},
    says = "Where distances are given there is one for every source and seat.")
final class SourceDistances implements Check<SeatLevelsRequest> {

  @Override
  public void check(SeatLevelsRequest q, Refusing to) {
    if (q.distances() == null) {
      return;
    }
    Set<Way> measured = new HashSet<>();
    q.distances().forEach(tape -> measured.add(new Way(tape.source(), tape.seat())));
    for (SoundSource source : q.sources()) {
      for (Seat seat : q.seats()) {
        if (!measured.contains(new Way(source.name(), seat.name()))) {
          to.refuse(SeatLevelFault.SEAT_DISTANCE_MISSING)
              .at("/distances")
              .given(Given.fromTo(source.name(), seat.name()));
        }
      }
    }
  }
}
