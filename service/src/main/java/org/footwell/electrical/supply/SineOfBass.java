package org.footwell.electrical.supply;

import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.electrical.supply.SupplyCableRequest.Branch;

/** Bass that lasts draws what a sine does. */
@Check.Of(
    value = {
      "sustained_bass",
      "full_sine_a",
      "branches.*.sustained_bass",
      "branches.*.full_sine_a"
    },
    says = "full_sine_a is required where sustained_bass is true.")
final class SineOfBass implements Check<SupplyCableRequest> {

  @Override
  public void check(SupplyCableRequest q, Refusing to) {
    require(q.sustainedBass(), q.fullSineA(), "", to);
    for (int i = 0; q.branches() != null && i < q.branches().size(); i++) {
      Branch branch = q.branches().get(i);
      require(branch.sustainedBass(), branch.fullSineA(), "/branches/" + i, to);
    }
  }

  private static void require(boolean sustained, Double fullSineA, String at, Refusing to) {
    if (sustained && fullSineA == null) {
      to.refuse(CoreFault.REQUIRED).at(at + "/full_sine_a");
    }
  }
}
