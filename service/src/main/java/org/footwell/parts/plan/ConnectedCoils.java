package org.footwell.parts.plan;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** Networks name coils of drivers that are there, each coil once. */
@Check.Of(
    value = {
      "drivers.*.id",
      "drivers.*.part",
      "new_parts.*.id",
      "new_parts.*.coil_count",
      "channels.*.network",
      "channels.*.branches.*.network"
    },
    says =
        "Networks name drivers by their id, with the number of a coil where they have several; each"
            + " coil is in one network once, and all coils of a driver in the same.")
final class ConnectedCoils implements Check<VehiclePlan> {

  @Override
  public void check(VehiclePlan plan, Refusing to) {
    PlannedCoils.of(plan, to);
  }
}
