package org.footwell.electrical.supply;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** One listens from the charge there is down to some depth of the capacity. */
@Check.Of(
    value = {"depth", "battery.charge"},
    says = "depth is at most 1 and above 1 − battery.charge.")
final class DepthLeft implements Check<SupplyBudgetRequest> {

  @Override
  public void check(SupplyBudgetRequest q, Refusing to) {
    double used = 1 - q.battery().charge();
    if (q.depth() > 1) {
      to.refuse(BudgetFault.DEPTH_BEYOND_CAPACITY).at("/depth").given(q.depth());
    } else if (q.depth() <= used) {
      to.refuse(BudgetFault.DEPTH_ALREADY_REACHED).at("/depth").given(q.depth()).with("used", used);
    }
  }
}
