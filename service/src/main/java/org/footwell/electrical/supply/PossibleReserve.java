package org.footwell.electrical.supply;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.parts.Battery;

/** Reserve and capacity are those of one battery. */
@Check.Of(
    value = {"capacity_ah", "peukert_exponent", "reserve_min"},
    says =
        "reserve_min gives, with a capacity_ah below 500, an exponent of Peukert above 0.9 and at"
            + " most 1.6.")
final class PossibleReserve implements Check<Battery> {

  @Override
  public void check(Battery battery, Refusing to) {
    if (battery.peukertExponent() != null || battery.reserveMin() == null) {
      return;
    }
    double exponent =
        Discharge.exponent(battery.capacityAh(), battery.reserveMin(), Arithmetic.SILENT);
    if (!(exponent > 0.9 && exponent <= 1.6)) {
      to.refuse(BudgetFault.RESERVE_IMPOSSIBLE)
          .at("/reserve_min")
          .given(battery.reserveMin())
          .with("capacity", battery.capacityAh());
    }
  }
}
