package org.footwell.vehicle.packages;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** What is offered is called otherwise than what is there. */
@Check.Of(
    value = {
      "plan.new_parts.*.id",
      "plan.amplifiers.*.id",
      "offer.drivers.*.part.id",
      "offer.amplifiers.*.amplifier.id"
    },
    says = "No id of what is offered is one of a part or an amplifier of the plan.")
final class OfferedIds implements Check<PackageOptionsRequest> {

  @Override
  public void check(PackageOptionsRequest q, Refusing to) {
    List<String> parts = q.plan().newParts().stream().map(part -> part.id()).toList();
    List<String> amplifiers = q.plan().amplifiers().stream().map(one -> one.id()).toList();
    for (int i = 0; i < q.offer().drivers().size(); i++) {
      taken(q.offer().drivers().get(i).id(), parts, "/offer/drivers/" + i + "/part/id", to);
    }
    for (int i = 0; i < q.offer().amplifiers().size(); i++) {
      String at = "/offer/amplifiers/" + i + "/amplifier/id";
      taken(q.offer().amplifiers().get(i).id(), amplifiers, at, to);
    }
  }

  private static void taken(String id, List<String> known, String at, Refusing to) {
    if (known.contains(id)) {
      to.refuse(PackageFault.ID_TAKEN_BY_THE_PLAN).at(at).given(id);
    }
  }
}
