package org.footwell.acoustic.alignment;

import java.math.RoundingMode;
import java.util.List;
import org.footwell.acoustic.alignment.SeatDelaysRequest.PlacedChannel;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Given;
import org.footwell.calculation.text.Lengths;
import org.footwell.calculation.text.Measure;
import org.footwell.parts.Position;
import org.footwell.parts.Seat;

/** A loudspeaker is not in an ear. */
@Check.Of(
    value = {
      "distances",
      "arrivals",
      "channels.*.name",
      "channels.*.position",
      "seats.*.name",
      "seats.*.position",
      "seats.*.left_ear",
      "seats.*.right_ear"
    },
    says = "Where positions count, a channel is at least 0.05 m from every seat or ear.")
final class ChannelsOffEars implements Check<SeatDelaysRequest> {

  /** As the bound of the tape measure. */
  private static final double CLOSEST_M = 0.05;

  private static final Lengths CLOSEST =
      new Lengths(List.of(Double.toString(CLOSEST_M)), Measure.M, "", RoundingMode.CEILING);

  @Override
  public void check(SeatDelaysRequest q, Refusing to) {
    if (q.distances() != null || q.arrivals() != null) {
      return;
    }
    for (int c = 0; c < q.channels().size(); c++) {
      PlacedChannel channel = q.channels().get(c);
      // That a position is missing is told by another.
      for (int s = 0; channel.position() != null && s < q.seats().size(); s++) {
        check(channel, q.seats().get(s), "/channels/" + c + "/position", to);
      }
    }
  }

  private static void check(PlacedChannel channel, Seat seat, String at, Refusing to) {
    for (Position point : LayoutReader.points(seat)) {
      if (Layout.distanceM(channel.position(), point, Arithmetic.SILENT) < CLOSEST_M) {
        to.refuse(AlignmentFault.TOO_CLOSE)
            .at(at)
            .given(Given.both(channel.name(), seat.name()))
            .allowed(Allowed.only(CLOSEST));
      }
    }
  }
}
