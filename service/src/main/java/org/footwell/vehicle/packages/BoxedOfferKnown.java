package org.footwell.vehicle.packages;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.parts.Driver;
import org.footwell.parts.WayRole;

/** What a driver makes of a box is known by its circuit only. */
@Check.Of(
    value = {
      "plan.drivers.*.id",
      "plan.drivers.*.part",
      "plan.drivers.*.role",
      "plan.new_parts.*.id",
      "plan.new_parts.*.role",
      "slots.*.name",
      "slots.*.drivers",
      "slots.*.room",
      "offer.drivers.*.part.role",
      "offer.drivers.*.part.driver.re_ohm",
      "offer.drivers.*.part.driver.qms",
      "offer.drivers.*.part.driver.qes",
      "offer.drivers.*.part.driver.vas_l",
      "wishes.keep"
    },
    says =
        "re_ohm, qms, qes and vas_l of a driver that is offered for a slot with room for a box are"
            + " given.")
final class BoxedOfferKnown implements Check<PackageOptionsRequest> {

  @Override
  public void check(PackageOptionsRequest q, Refusing to) {
    for (FreeSlot slot : q.slots()) {
      if (slot.room() != null && !q.keeps(slot)) {
        WayRole role = SlotLayout.role(slot, q.plan());
        SlotLayout.suiting(role, q.offer())
            .forEach(
                driver -> {
                  String at =
                      "/offer/drivers/" + q.offer().drivers().indexOf(driver) + "/part/driver/";
                  Driver data = driver.part().driver();
                  Lacking.refuse(data.reOhm(), at + "re_ohm", to);
                  Lacking.refuse(data.qms(), at + "qms", to);
                  Lacking.refuse(data.qes(), at + "qes", to);
                  Lacking.refuse(data.vasL(), at + "vas_l", to);
                });
      }
    }
  }
}
