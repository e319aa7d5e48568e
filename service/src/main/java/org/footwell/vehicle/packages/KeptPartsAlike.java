package org.footwell.vehicle.packages;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** What stays in a slot is one part. */
@Check.Of(
    value = {
      "plan.drivers.*.id",
      "plan.drivers.*.part",
      "slots.*.name",
      "slots.*.drivers",
      "wishes.keep"
    },
    says = "The drivers of a slot in wishes.keep have the same part in the plan.")
final class KeptPartsAlike implements Check<PackageOptionsRequest> {

  @Override
  public void check(PackageOptionsRequest q, Refusing to) {
    for (int s = 0; s < q.slots().size(); s++) {
      FreeSlot slot = q.slots().get(s);
      List<String> parts = SlotLayout.parts(SlotLayout.drivers(slot.drivers(), q.plan()), q.plan());
      if (q.keeps(slot) && parts.size() > 1) {
        to.refuse(PackageFault.KEPT_PARTS_UNLIKE)
            .at("/slots/" + s + "/drivers")
            .given(slot.name())
            .own("parts", parts);
      }
    }
  }
}
