package org.footwell.electrical.supply;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** An alternator charges a battery of its own system, of 12 V or 24 V. */
@Check.Of(
    value = {"alternator.voltage_v", "battery.resting_v"},
    says = "alternator.voltage_v is 0.9 to 1.4 times battery.resting_v.")
final class VoltagesMatch implements Check<SupplyBudgetRequest> {

  @Override
  public void check(SupplyBudgetRequest q, Refusing to) {
    double ratio = q.alternator().voltageV() / q.battery().restingV();
    if (ratio < 0.9 || ratio > 1.4) {
      to.refuse(BudgetFault.VOLTAGES_DO_NOT_MATCH)
          .at("/battery/resting_v")
          .given(q.battery().restingV())
          .with("voltage", q.alternator().voltageV());
    }
  }
}
