package org.footwell.vehicle.reading;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.parts.plan.ChannelSettings;
import org.footwell.parts.plan.VehiclePlan;

/** A gain is set against the signal that comes in. */
@Check.Of(
    value = {"settings.*.gain_v", "signal"},
    says = "settings.*.gain_v needs signal.")
public final class GainOfSignal implements Check<VehiclePlan> {

  @Override
  public void check(VehiclePlan plan, Refusing to) {
    for (int s = 0; s < plan.settings().size(); s++) {
      ChannelSettings set = plan.settings().get(s);
      if (set.gainV() != null && plan.signal() == null) {
        to.refuse(PlanRefusal.GAIN_WITHOUT_SIGNAL)
            .at("/settings/" + s + "/gain_v")
            .given(set.gainV());
      }
    }
  }
}
