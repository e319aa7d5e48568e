package org.footwell.vehicle.packages;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.parts.offer.OfferedDriver;
import org.footwell.parts.plan.VehiclePlan;

/** A driver whose size is not known cannot be held against an opening. */
@Check.Of(
    value = {
      "plan.drivers.*.id",
      "plan.drivers.*.part",
      "plan.drivers.*.role",
      "plan.drivers.*.opening",
      "plan.new_parts.*.id",
      "plan.new_parts.*.role",
      "slots",
      "offer.drivers.*.part.role",
      "offer.drivers.*.part.cut_out_mm",
      "offer.drivers.*.part.mounting_depth_mm",
      "offer.boxes.*.driver_count",
      "offer.boxes.*.size",
      "wishes.keep"
    },
    says =
        "cut_out_mm and mounting_depth_mm are given of a driver that is offered for a slot with an"
            + " opening, or for one with room for a box that is offered.")
final class OfferedSizesKnown implements Check<PackageOptionsRequest> {

  @Override
  public void check(PackageOptionsRequest q, Refusing to) {
    for (FreeSlot slot : q.slots()) {
      if (!q.keeps(slot) && (hasOpening(slot, q.plan()) || hasBox(slot, q))) {
        SlotLayout.suiting(SlotLayout.role(slot, q.plan()), q.offer())
            .forEach(driver -> sized(driver, q, to));
      }
    }
  }

  private static boolean hasOpening(FreeSlot slot, VehiclePlan plan) {
    return slot.opening() != null
        || plan.drivers().stream()
            .anyMatch(one -> one.opening() != null && slot.drivers().contains(one.id()));
  }

  private static boolean hasBox(FreeSlot slot, PackageOptionsRequest q) {
    return slot.room() != null
        && q.offer().boxes().stream().anyMatch(box -> Fillings.suits(box, slot));
  }

  private static void sized(OfferedDriver driver, PackageOptionsRequest q, Refusing to) {
    String at = "/offer/drivers/" + q.offer().drivers().indexOf(driver) + "/part";
    Lacking.refuse(driver.part().cutOutMm(), at + "/cut_out_mm", to);
    Lacking.refuse(driver.part().mountingDepthMm(), at + "/mounting_depth_mm", to);
  }
}
