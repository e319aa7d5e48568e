package org.footwell.vehicle.reading;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.parts.plan.ParametricFilter;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.chain.FilterChain;

/** A digital filter has no frequency above half its sample rate. */
@Check.Of(
    value = {"channels.*.equaliser.*.frequency_hz", "processor"},
    says = "channels.*.equaliser.*.frequency_hz is below half the sample rate of the processor.")
public final class EqualiserBelowHalfRate implements Check<VehiclePlan> {

  @Override
  public void check(VehiclePlan plan, Refusing to) {
    double half = FilterChain.rateHz(plan) / 2;
    for (int c = 0; c < plan.channels().size(); c++) {
      List<ParametricFilter> equaliser = plan.channels().get(c).equaliser();
      for (int f = 0; f < equaliser.size(); f++) {
        if (equaliser.get(f).frequencyHz() >= half) {
          to.refuse(PlanRefusal.EQUALISER_ABOVE_HALF_RATE)
              .at("/channels/" + c + "/equaliser/" + f + "/frequency_hz")
              .given(equaliser.get(f).frequencyHz())
              .limit(half);
        }
      }
    }
  }
}
