package org.footwell.vehicle.repair;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.footwell.parts.Crossover;
import org.footwell.parts.Filter;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.PlannedChannelBuilder;
import org.footwell.parts.plan.Plans;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.parts.plan.VehiclePlanBuilder;

/** Other filters: the corners of a crossover together, or the corner or order of one. */
final class FilterChanges {

  /** Corners are moved by these factors: thirds of an octave and the octave, either way. */
  private static final List<Double> FACTORS = List.of(1.25, 1.6, 2.0, 0.8, 0.63, 0.5);

  private static final List<Integer> ORDERS = List.of(2, 4, 6, 8);

  private final PlanIndex index;
  private final VehiclePlan plan;
  private final List<Change> into;

  FilterChanges(PlanIndex index, List<Change> into) {
    this.index = index;
    this.plan = index.plan();
    this.into = into;
  }

  /** A channel and the one of the other side: their filters are changed together. */
  private List<Integer> sides(int c) {
    return IntStream.range(0, plan.channels().size())
        .filter(other -> other == c || index.isPair(c, other))
        .boxed()
        .toList();
  }

  /** The crossovers of a lower channel and of its other side, with the filters of all their channels. */
  void crossovers(int lower) {
    List<Integer> lowers = sides(lower);
    List<Integer> own =
        IntStream.range(0, plan.crossovers().size())
            .filter(x -> lowers.contains(index.channel(plan.crossovers().get(x).lower())))
            .boxed()
            .toList();
    if (own.isEmpty() || lowers.get(0) != lower) {
      return;
    }
    double was = plan.crossovers().get(own.get(0)).frequencyHz();
    for (double factor : FACTORS) {
      double hz = round(was * factor);
      into.add(
          new Change(
              RepairKind.CROSSOVER,
              "crossover/" + lower,
              own.stream().map(x -> "/crossovers/" + x + "/frequency_hz").toList(),
              hz(was),
              hz(hz),
              null,
              any -> moved(any, own, hz)));
    }
  }

  private VehiclePlan moved(VehiclePlan any, List<Integer> crossovers, double hz) {
    VehiclePlan moved = any;
    for (int x : crossovers) {
      int lower = index.channel(plan.crossovers().get(x).lower());
      int upper = index.channel(plan.crossovers().get(x).upper());
      moved = Plans.channel(moved, lower, one -> withLowPass(one, at(one.lowPass(), hz)));
      moved = Plans.channel(moved, upper, one -> withHighPass(one, at(one.highPass(), hz)));
      moved =
          VehiclePlanBuilder.builder(moved)
              .crossovers(
                  Plans.changed(
                      moved.crossovers(), x, one -> new Crossover(one.lower(), one.upper(), hz)))
              .build();
    }
    return moved;
  }

  /** The two filters of a channel, and of its other side, by themselves. */
  void filters(int c) {
    PlannedChannel channel = plan.channels().get(c);
    if (sides(c).get(0) != c) {
      return;
    }
    filter(c, "high_pass", channel.highPass(), FilterChanges::withHighPass);
    filter(c, "low_pass", channel.lowPass(), FilterChanges::withLowPass);
  }

  /** A channel with a filter in one of its two places. */
  private interface Fitted {
    PlannedChannel with(PlannedChannel channel, Filter filter);
  }

  private void filter(int c, String side, Filter is, Fitted fitted) {
    String at = "/channels/" + c + "/" + side;
    List<Integer> sides = sides(c);
    if (is == null) {
      return;
    }
    for (double factor : FACTORS) {
      Filter other = at(is, round(is.frequencyHz() * factor));
      into.add(
          new Change(
              RepairKind.FILTER,
              at,
              places(sides, side + "/frequency_hz"),
              hz(is.frequencyHz()),
              hz(other.frequencyHz()),
              null,
              any -> all(any, sides, one -> fitted.with(one, other))));
    }
    for (int order : ORDERS) {
      Filter other = new Filter(is.kind(), order, is.frequencyHz(), is.besselNormalisation());
      if (order != is.order() && other.possible()) {
        into.add(
            new Change(
                RepairKind.FILTER_ORDER,
                at,
                places(sides, side + "/order"),
                is.order().toString(),
                Integer.toString(order),
                null,
                any -> all(any, sides, one -> fitted.with(one, other))));
      }
    }
  }

  private static List<String> places(List<Integer> channels, String field) {
    return channels.stream().map(c -> "/channels/" + c + "/" + field).toList();
  }

  private static VehiclePlan all(
      VehiclePlan any, List<Integer> channels, UnaryOperator<PlannedChannel> change) {
    VehiclePlan changed = any;
    for (int c : channels) {
      changed = Plans.channel(changed, c, change);
    }
    return changed;
  }

  /** A high-pass where there is none. */
  void newHighPass(int c, double hz) {
    if (plan.channels().get(c).highPass() == null) {
      Filter filter = Filter.of(Filter.Kind.LINKWITZ_RILEY, 4, round(hz));
      into.add(
          new Change(
              RepairKind.FILTER,
              "/channels/" + c + "/high_pass",
              List.of("/channels/" + c),
              null,
              "linkwitz_riley, 4, " + hz(filter.frequencyHz()),
              null,
              any -> Plans.channel(any, c, one -> withHighPass(one, filter))));
    }
  }

  private static Filter at(Filter filter, double hz) {
    return filter == null
        ? null
        : new Filter(filter.kind(), filter.order(), hz, filter.besselNormalisation());
  }

  private static PlannedChannel withHighPass(PlannedChannel channel, Filter filter) {
    return PlannedChannelBuilder.builder(channel).highPass(filter).build();
  }

  private static PlannedChannel withLowPass(PlannedChannel channel, Filter filter) {
    return PlannedChannelBuilder.builder(channel).lowPass(filter).build();
  }

  /** Two digits are enough for a corner. */
  private static double round(double hz) {
    double digit = Math.pow(10, Math.floor(Math.log10(hz)) - 1);
    return Math.round(hz / digit) * digit;
  }

  private static String hz(double hz) {
    return Math.round(hz * 10) / 10.0 + " Hz";
  }
}
