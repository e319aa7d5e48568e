package org.footwell.vehicle.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.parts.plan.VehiclePlanBuilder;

/** Plans with one entry of a list changed. */
final class Plans {

  private Plans() {}

  static <T> List<T> changed(List<T> all, int at, UnaryOperator<T> change) {
    List<T> changed = new ArrayList<>(all);
    changed.set(at, change.apply(all.get(at)));
    return changed;
  }

  static VehiclePlan channel(VehiclePlan plan, int c, UnaryOperator<PlannedChannel> change) {
    return VehiclePlanBuilder.builder(plan).channels(changed(plan.channels(), c, change)).build();
  }

  static VehiclePlan amplifier(VehiclePlan plan, int a, UnaryOperator<PlannedAmplifier> change) {
    return VehiclePlanBuilder.builder(plan)
        .amplifiers(changed(plan.amplifiers(), a, change))
        .build();
  }
}
