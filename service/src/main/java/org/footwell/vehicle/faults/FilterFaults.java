package org.footwell.vehicle.faults;

import java.util.List;
import org.footwell.parts.Filter;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.PlannedChannelBuilder;
import org.footwell.parts.plan.Plans;
import org.footwell.parts.plan.VehiclePlan;

/** What may be wrong with the filters of a processor. */
final class FilterFaults {

  /** Corners that are off lie around the planned one, in octaves. */
  private static final VehicleFault.Range OCTAVES = VehicleFault.Range.around(0, 1, -3, 3, 0.5);

  private static final List<Integer> ORDERS = List.of(1, 2, 3, 4, 6, 8);

  private final VehiclePlan plan;
  private final List<VehicleFault> into;

  FilterFaults(VehiclePlan plan, List<VehicleFault> into) {
    this.plan = plan;
    this.into = into;
  }

  /** A channel with another filter in the place of one. */
  private interface Refitted {
    PlannedChannel with(PlannedChannel channel, Filter filter);
  }

  void of(int c) {
    PlannedChannel planned = plan.channels().get(c);
    filter(
        c,
        planned.highPass(),
        List.of(FaultKind.HIGH_PASS_MISSING, FaultKind.HIGH_PASS_OFF, FaultKind.HIGH_PASS_ORDER),
        (channel, filter) -> PlannedChannelBuilder.builder(channel).highPass(filter).build());
    filter(
        c,
        planned.lowPass(),
        List.of(FaultKind.LOW_PASS_MISSING, FaultKind.LOW_PASS_OFF, FaultKind.LOW_PASS_ORDER),
        (channel, filter) -> PlannedChannelBuilder.builder(channel).lowPass(filter).build());
  }

  private void filter(int c, Filter is, List<FaultKind> kinds, Refitted refitted) {
    if (is == null) {
      return;
    }
    String thing = kinds.get(0) + "/" + c;
    into.add(
        VehicleFault.of(
            kinds.get(0),
            thing,
            c,
            null,
            any -> Plans.channel(any, c, one -> refitted.with(one, null))));
    into.add(
        VehicleFault.of(
            kinds.get(1),
            thing,
            c,
            null,
            OCTAVES,
            (any, octaves) -> Plans.channel(any, c, one -> refitted.with(one, moved(is, octaves))),
            (line, octaves) -> line.cornerHz(moved(is, octaves).frequencyHz())));
    List<Filter> others =
        ORDERS.stream()
            .filter(order -> !order.equals(is.order()))
            .map(order -> new Filter(is.kind(), order, is.frequencyHz(), is.besselNormalisation()))
            .filter(Filter::possible)
            .toList();
    into.add(
        VehicleFault.of(
            kinds.get(2),
            thing,
            c,
            null,
            VehicleFault.Range.oneOf(others.size()),
            (any, i) -> Plans.channel(any, c, one -> refitted.with(one, others.get((int) i))),
            (line, i) -> line.filterOrder(others.get((int) i).order())));
  }

  private static Filter moved(Filter filter, double octaves) {
    double hz = filter.frequencyHz() * Math.pow(2, octaves);
    return new Filter(filter.kind(), filter.order(), hz, filter.besselNormalisation());
  }
}
