package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.AlignmentFault.POSITION_MISSING;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** Ways that nobody measured follow from where everything is. */
@Check.Of(
    value = {
      "distances",
      "arrivals",
      "channels.*.position",
      "seats.*.position",
      "seats.*.left_ear",
      "seats.*.right_ear"
    },
    says = "Without distances and arrivals every channel and every seat has a position.")
final class PositionsEverywhere implements Check<SeatDelaysRequest> {

  @Override
  public void check(SeatDelaysRequest q, Refusing to) {
    if (q.distances() != null || q.arrivals() != null) {
      return;
    }
    for (int i = 0; i < q.channels().size(); i++) {
      if (q.channels().get(i).position() == null) {
        to.refuse(POSITION_MISSING).at("/channels/" + i + "/position");
      }
    }
    for (int i = 0; i < q.seats().size(); i++) {
      if (q.seats().get(i).head() == null) {
        to.refuse(POSITION_MISSING).at("/seats/" + i + "/position");
      }
    }
  }
}
