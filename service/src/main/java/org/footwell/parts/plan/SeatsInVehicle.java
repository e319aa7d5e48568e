package org.footwell.parts.plan;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.parts.Position;
import org.footwell.parts.Seat;

/** Seats and loudspeakers lie within one vehicle: no farther apart than it is long, and then some. */
@Check.Of(
    value = {
      "vehicle.cabin.length_m",
      "seats.*.name",
      "seats.*.position",
      "seats.*.left_ear",
      "seats.*.right_ear",
      "drivers.*.position"
    },
    says = "No seat is farther from a driver than twice the length of the cabin.")
final class SeatsInVehicle implements Check<VehiclePlan> {

  @Override
  public void check(VehiclePlan plan, Refusing to) {
    double most = 2 * plan.vehicle().cabin().lengthM();
    for (int s = 0; s < plan.seats().size(); s++) {
      Seat seat = plan.seats().get(s);
      double farthest = seat.head() == null ? 0 : farthest(plan, seat.head());
      if (farthest > most) {
        to.refuse(PlanFault.SEAT_OUTSIDE_VEHICLE)
            .at("/seats/" + s)
            .value(farthest)
            .limit(most)
            .own("name", seat.name());
      }
    }
  }

  private static double farthest(VehiclePlan plan, Position head) {
    return plan.drivers().stream()
        .mapToDouble(driver -> driver.position().distanceTo(head))
        .max()
        .orElse(0);
  }
}
