package org.footwell.acoustic.alignment;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** Where one arrival was measured, all were. */
@Check.Of(
    value = {
      "arrivals.*.channel",
      "arrivals.*.microphone",
      "microphones.*.id",
      "microphones.*.seat",
      "channels.*.name",
      "seats.*.name"
    },
    says =
        "Where arrivals are given there is one for every channel and microphone, and a microphone at"
            + " every seat; without microphones those of several seats have the seats' names.")
final class ArrivalsEverywhere implements Check<SeatDelaysRequest> {

  @Override
  public void check(SeatDelaysRequest q, Refusing to) {
    if (q.arrivals() != null) {
      new Arrivals(q).check(to);
    }
  }
}
