package org.footwell.vehicle.packages;

import org.footwell.parts.Driver;
import org.footwell.parts.plan.Extra;
import org.footwell.parts.plan.VehiclePlan;

/** What of a plan costs and weighs in every package, amplifiers left out; all of it must be known. */
record BaseCost(SlotLayout layout) {

  PackageFigures figures() {
    VehiclePlan plan = layout.index().plan();
    long price = 0;
    double mass = 0;
    for (int d = 0; d < plan.drivers().size(); d++) {
      int driver = d;
      if (layout.slots().stream().noneMatch(slot -> slot.drivers().contains(driver))) {
        Driver part = layout.index().part(d).driver();
        price += Prices.of(part.price());
        mass += part.massG();
      }
      int replaced = layout.index().replacedBy(d);
      mass -= replaced < 0 ? 0 : plan.factoryParts().get(replaced).driver().massG();
    }
    for (Extra extra : plan.extras()) {
      price += extra.extraCount() * Prices.of(extra.price());
      mass += extra.extraCount() * extra.massG();
    }
    return PackageFigures.cost(price, mass);
  }
}
