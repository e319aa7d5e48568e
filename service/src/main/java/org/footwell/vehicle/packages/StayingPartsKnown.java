package org.footwell.vehicle.packages;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.parts.Driver;
import org.footwell.parts.plan.VehiclePlan;

/** Packages with a part of the plan have figures. */
@Check.Of(
    value = {
      "plan.drivers.*.id",
      "plan.drivers.*.part",
      "plan.new_parts.*.id",
      "plan.new_parts.*.driver.price",
      "plan.new_parts.*.driver.mass_g",
      "plan.new_parts.*.driver.sensitivity",
      "slots.*.name",
      "slots.*.drivers",
      "slots.*.may_stay",
      "wishes.keep"
    },
    says =
        "price, mass_g and sensitivity are given of new parts of the plan that stay or may: those in"
            + " no slot, in one of wishes.keep, or in one where may_stay holds and all parts are the"
            + " same.")
final class StayingPartsKnown implements Check<PackageOptionsRequest> {

  @Override
  public void check(PackageOptionsRequest q, Refusing to) {
    Set<String> staying = staying(q);
    VehiclePlan plan = q.plan();
    for (int p = 0; p < plan.newParts().size(); p++) {
      if (staying.contains(plan.newParts().get(p).id())) {
        Driver driver = plan.newParts().get(p).driver();
        String at = "/plan/new_parts/" + p + "/driver";
        Lacking.refuse(driver.price(), at + "/price", to);
        Lacking.refuse(driver.massG(), at + "/mass_g", to);
        Lacking.refuse(driver.sensitivity(), at + "/sensitivity", to);
      }
    }
  }

  /** Ids of their parts. */
  private static Set<String> staying(PackageOptionsRequest q) {
    Set<String> staying = new HashSet<>();
    q.plan().drivers().stream()
        .filter(driver -> q.slots().stream().noneMatch(s -> s.drivers().contains(driver.id())))
        .forEach(driver -> staying.add(driver.part()));
    for (FreeSlot slot : q.slots()) {
      List<String> parts = SlotLayout.parts(SlotLayout.drivers(slot.drivers(), q.plan()), q.plan());
      if (parts.size() == 1 && (slot.mayStay() || q.keeps(slot))) {
        staying.addAll(parts);
      }
    }
    return staying;
  }
}
