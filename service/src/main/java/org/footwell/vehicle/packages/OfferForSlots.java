package org.footwell.vehicle.packages;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.WayRole;

/** What must be filled can be. */
@Check.Of(
    value = {
      "plan.drivers.*.id",
      "plan.drivers.*.part",
      "plan.drivers.*.role",
      "plan.new_parts.*.id",
      "plan.new_parts.*.role",
      "slots.*.name",
      "slots.*.drivers",
      "slots.*.may_stay",
      "offer.drivers.*.part.role",
      "wishes.keep"
    },
    says = "A driver of its role is offered for a slot in which nothing stays.")
final class OfferForSlots implements Check<PackageOptionsRequest> {

  @Override
  public void check(PackageOptionsRequest q, Refusing to) {
    for (int s = 0; s < q.slots().size(); s++) {
      FreeSlot slot = q.slots().get(s);
      WayRole role = SlotLayout.role(slot, q.plan());
      if (SlotLayout.suiting(role, q.offer()).isEmpty() && !q.keeps(slot) && !slot.mayStay()) {
        to.refuse(PackageFault.NOTHING_OFFERED_FOR_SLOT)
            .at("/slots/" + s)
            .given(slot.name())
            .with("role", role == null ? Phrase.nothing() : used(role));
      }
    }
  }

  private static Phrase used(WayRole role) {
    return Phrase.of(OfferWords.USED_AS).field("role", Names.of(role));
  }
}
