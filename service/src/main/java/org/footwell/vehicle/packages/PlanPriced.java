package org.footwell.vehicle.packages;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.VehiclePlan;

/** What a package costs and weighs is known with all that stays beside it, and with what goes. */
@Check.Of(
    value = {
      "amplifiers.*.price",
      "amplifiers.*.mass_g",
      "extras.*.price",
      "drivers.*.replaces",
      "factory_parts.*.id",
      "factory_parts.*.driver.mass_g"
    },
    says =
        "amplifiers.*.price, amplifiers.*.mass_g and extras.*.price are given, and driver.mass_g of"
            + " factory parts that are replaced.")
final class PlanPriced implements Check<VehiclePlan> {

  @Override
  public void check(VehiclePlan plan, Refusing to) {
    for (int a = 0; a < plan.amplifiers().size(); a++) {
      Lacking.refuse(plan.amplifiers().get(a).price(), "/amplifiers/" + a + "/price", to);
      Lacking.refuse(plan.amplifiers().get(a).massG(), "/amplifiers/" + a + "/mass_g", to);
    }
    for (int e = 0; e < plan.extras().size(); e++) {
      Lacking.refuse(plan.extras().get(e).price(), "/extras/" + e + "/price", to);
    }
    for (int f = 0; f < plan.factoryParts().size(); f++) {
      String id = plan.factoryParts().get(f).id();
      if (plan.drivers().stream().map(PlacedDriver::replaces).anyMatch(id::equals)) {
        String at = "/factory_parts/" + f + "/driver/mass_g";
        Lacking.refuse(plan.factoryParts().get(f).driver().massG(), at, to);
      }
    }
  }
}
