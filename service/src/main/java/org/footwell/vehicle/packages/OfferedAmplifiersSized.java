package org.footwell.vehicle.packages;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** An amplifier whose size is not known cannot be held against its room. */
@Check.Of(
    value = {"amplifier_place.room", "offer.amplifiers.*.size"},
    says = "offer.amplifiers.*.size is given where amplifier_place.room is.")
final class OfferedAmplifiersSized implements Check<PackageOptionsRequest> {

  @Override
  public void check(PackageOptionsRequest q, Refusing to) {
    if (q.amplifierPlace() != null && q.amplifierPlace().room() != null) {
      for (int a = 0; a < q.offer().amplifiers().size(); a++) {
        String at = "/offer/amplifiers/" + a + "/size";
        Lacking.refuse(q.offer().amplifiers().get(a).size(), at, to);
      }
    }
  }
}
