package org.footwell.parts.plan;

import java.time.LocalDate;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** A quote holds at least on the day it is made. */
@Check.Of(
    value = {"quote.valid_until", "date"},
    says = "quote.valid_until is not before date.")
final class NotBefore implements Check<VehiclePlan> {

  @Override
  public void check(VehiclePlan plan, Refusing to) {
    String until = plan.quote() == null ? null : plan.quote().validUntil();
    if (until != null
        && plan.date() != null
        && LocalDate.parse(until).isBefore(LocalDate.parse(plan.date()))) {
      to.refuse(PlanFault.VALID_BEFORE_DATE).at("/quote/valid_until").given(until);
    }
  }
}
