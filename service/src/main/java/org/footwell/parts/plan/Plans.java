package org.footwell.parts.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Plans with one entry of a list changed. */
public final class Plans {

  private Plans() {}

  /** A list with one entry changed. */
  public static <T> List<T> changed(List<T> all, int at, UnaryOperator<T> change) {
    List<T> changed = new ArrayList<>(all);
    changed.set(at, change.apply(all.get(at)));
    return changed;
  }

  public static VehiclePlan channel(VehiclePlan plan, int c, UnaryOperator<PlannedChannel> change) {
    return VehiclePlanBuilder.builder(plan).channels(changed(plan.channels(), c, change)).build();
  }

  /** With a branch of a channel changed. */
  public static VehiclePlan branch(VehiclePlan plan, int c, int b, UnaryOperator<Branch> change) {
    return channel(
        plan,
        c,
        one ->
            PlannedChannelBuilder.builder(one)
                .branches(changed(one.branchList(), b, change))
                .build());
  }

  public static VehiclePlan driver(VehiclePlan plan, int d, UnaryOperator<PlacedDriver> change) {
    return VehiclePlanBuilder.builder(plan).drivers(changed(plan.drivers(), d, change)).build();
  }

  public static VehiclePlan amplifier(
      VehiclePlan plan, int a, UnaryOperator<PlannedAmplifier> change) {
    return VehiclePlanBuilder.builder(plan)
        .amplifiers(changed(plan.amplifiers(), a, change))
        .build();
  }
}
