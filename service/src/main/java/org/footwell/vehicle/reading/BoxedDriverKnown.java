package org.footwell.vehicle.reading;

import java.util.Set;
import java.util.stream.Collectors;
import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.parts.Driver;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.VehiclePlan;

/** What a box makes of a driver cannot be said by its volume alone. */
@Check.Of(
    value = {
      "drivers.*.part",
      "drivers.*.enclosure",
      "new_parts.*.id",
      "new_parts.*.driver.fs_hz",
      "new_parts.*.driver.vas_l"
    },
    says = "new_parts.*.driver.vas_l needs fs_hz where the driver has an enclosure.")
public final class BoxedDriverKnown implements Check<VehiclePlan> {

  @Override
  public void check(VehiclePlan plan, Refusing to) {
    Set<String> boxed =
        plan.drivers().stream()
            .filter(driver -> driver.enclosure() != null)
            .map(PlacedDriver::part)
            .collect(Collectors.toSet());
    for (int p = 0; p < plan.newParts().size(); p++) {
      Driver data = plan.newParts().get(p).driver();
      if (boxed.contains(plan.newParts().get(p).id())
          && data.vasL() != null
          && data.fsHz() == null) {
        to.refuse(CoreFault.REQUIRED).at("/new_parts/" + p + "/driver/fs_hz");
      }
    }
  }
}
