package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.footwell.acoustic.alignment.AlignmentFinding;
import org.footwell.acoustic.alignment.SeatDelays;
import org.footwell.acoustic.alignment.SeatDelaysRequest;
import org.footwell.acoustic.alignment.SeatDelaysRequestBuilder;
import org.footwell.acoustic.alignment.SeatDelaysResult;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.parts.Position;

/** When the channels of a plan arrive at its seats. */
final class DelayReview {

  private static final SeatDelays SEAT_DELAYS = new SeatDelays();

  /** Drivers of one channel further apart than this cannot share a delay; common practice, m. */
  private static final double APART_M = 1;

  private final VehiclePlan plan;
  private final Resolved resolved;
  private final Run run;

  DelayReview(VehiclePlan plan, Resolved resolved, Run run) {
    this.plan = plan;
    this.resolved = resolved;
    this.run = run;
  }

  /** The delays, or empty if they were refused. */
  Optional<SeatDelaysResult> delays() {
    return run.call(SEAT_DELAYS, request(), places());
  }

  private SeatDelaysRequest request() {
    List<SeatDelaysRequest.PlacedChannel> channels = new ArrayList<>();
    for (int i = 0; i < plan.channels().size(); i++) {
      VehiclePlan.Channel channel = plan.channels().get(i);
      Collection<Position> places =
          resolved.driversOf(i).stream().map(d -> plan.drivers().get(d).position()).toList();
      double apart = Positions.extent(places);
      if (apart > APART_M) {
        run.find(PlanFinding.DRIVERS_APART).at("/channels/" + i + "/network").value(apart);
      }
      channels.add(
          new SeatDelaysRequest.PlacedChannel(
              channel.id(),
              Positions.middle(places),
              channel.chainDelayMs(),
              channel.highPass(),
              channel.lowPass(),
              channel.fullRange(),
              channel.polarity()));
    }
    return SeatDelaysRequestBuilder.builder()
        .channels(channels)
        .seats(plan.seats())
        .crossovers(plan.crossovers())
        .processor(plan.processor())
        .temperatureC(plan.vehicle().temperatureC())
        .build();
  }

  /** The request of seat-delays is built like the plan, so most places are where they were. */
  private Rebase places() {
    Rebase places = Rebase.to("", null);
    if (plan.newParts().stream().allMatch(part -> part.sensitivity() != null)) {
      // The plan trims by its levels then.
      places.without(AlignmentFinding.TRIM_DISTANCE_LAW);
    }
    return places.from("", "").with("/temperature_c", "/vehicle/temperature_c");
  }
}
