package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.AlignmentFault.DISTANCE_MISSING;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.footwell.acoustic.alignment.SeatDelaysRequest.PlacedChannel;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Given;
import org.footwell.parts.Seat;

/** Where one way was measured by tape, all were. */
@Check.Of(
    value = {
      "arrivals",
      "distances.*.channel",
      "distances.*.seat",
      "channels.*.name",
      "seats.*.name"
    },
    says = "Where distances are given there is one for every channel and seat.")
final class DistancesEverywhere implements Check<SeatDelaysRequest> {

  @Override
  public void check(SeatDelaysRequest q, Refusing to) {
    if (q.distances() == null || q.arrivals() != null) {
      return;
    }
    Set<List<String>> measured = new HashSet<>();
    q.distances().forEach(tape -> measured.add(List.of(tape.channel(), tape.seat())));
    for (PlacedChannel channel : q.channels()) {
      for (Seat seat : q.seats()) {
        if (!measured.contains(List.of(channel.name(), seat.name()))) {
          to.refuse(DISTANCE_MISSING)
              .at("/distances")
              .given(Given.fromTo(channel.name(), seat.name()));
        }
      }
    }
  }
}
