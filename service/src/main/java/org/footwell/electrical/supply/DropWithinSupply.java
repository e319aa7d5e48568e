package org.footwell.electrical.supply;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;

/** Of its supply a cable may lose some, and not all. */
@Check.Of(
    value = {"supply_v", "permitted_drop_v", "branches.*.permitted_drop_v"},
    says =
        "permitted_drop_v is above 0 and below the supply; of a branch, below what the main cable"
            + " leaves of it.")
final class DropWithinSupply implements Check<SupplyCableRequest> {

  @Override
  public void check(SupplyCableRequest q, Refusing to) {
    possible(q, to);
  }

  static boolean possible(SupplyCableRequest q) {
    return possible(q, Refusing.unheard());
  }

  private static boolean possible(SupplyCableRequest q, Refusing to) {
    boolean possible = possible(q.permittedDropV(), q.supplyV(), "", to);
    boolean all = possible;
    for (int i = 0; possible && q.branches() != null && i < q.branches().size(); i++) {
      double left = q.supplyV() - q.permittedDropV();
      all &= possible(q.branches().get(i).permittedDropV(), left, "/branches/" + i, to);
    }
    return all;
  }

  private static boolean possible(double permitted, double supply, String at, Refusing to) {
    if (permitted == 0) {
      to.refuse(CableFault.PERMITTED_DROP_ZERO).at(at + "/permitted_drop_v").given(permitted);
    } else if (permitted >= supply) {
      to.refuse(CableFault.PERMITTED_DROP_ABOVE_SUPPLY)
          .at(at + "/permitted_drop_v")
          .given(permitted)
          .with("supply", supply)
          .allowed(Allowed.aboveAndBelow(0, supply, "V"));
    }
    return permitted > 0 && permitted < supply;
  }
}
