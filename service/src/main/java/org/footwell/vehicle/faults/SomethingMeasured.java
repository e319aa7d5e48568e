package org.footwell.vehicle.faults;

import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.parts.plan.VehiclePlan;

/** Without a measurement there is nothing a fault could show in. */
@Check.Of(
    value = {"measured", "measured_supply"},
    says = "measured or measured_supply is required here.")
final class SomethingMeasured implements Check<VehiclePlan> {

  @Override
  public void check(VehiclePlan plan, Refusing to) {
    if (plan.measured().isEmpty() && plan.measuredSupply().isEmpty()) {
      to.refuse(CoreFault.REQUIRED).at("/measured");
    }
  }
}
