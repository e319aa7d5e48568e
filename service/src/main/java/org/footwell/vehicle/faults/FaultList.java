package org.footwell.vehicle.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.footwell.calculation.Run;
import org.footwell.parts.Box;
import org.footwell.parts.BoxBuilder;
import org.footwell.parts.Filter;
import org.footwell.parts.plan.Branch;
import org.footwell.parts.plan.BranchBuilder;
import org.footwell.parts.plan.Enclosure;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlacedDriverBuilder;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.PlannedChannelBuilder;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.parts.plan.VehiclePlanBuilder;

/** Everything that may be wrong in a vehicle, each as a change of its plan. */
final class FaultList {

  /** Q of the leaks of boxes that are not tight, as ratios; this and below: common practice, no source. */
  private static final List<Double> LEAKING_QL = List.of(1.0, 2.0, 4.0);

  /** Corners that are off lie around the planned one, in octaves. */
  private static final VehicleFault.Range OCTAVES = VehicleFault.Range.around(0, 1, -3, 3, 0.5);

  /** Gains that are off, dB. */
  private static final VehicleFault.Range GAINS_DB = VehicleFault.Range.around(0, 6, -30, 30, 10);

  /** Bad joints lie around 0.1 ohm; common logarithm of ohms. */
  private static final VehicleFault.Range JOINTS =
      VehicleFault.Range.around(-1, 0.5, -2.5, 0.5, 0.5);

  /** The kind says all. */
  private static final VehicleFault.Told UNTOLD = (line, figure) -> {};

  private static final List<Integer> ORDERS = List.of(1, 2, 3, 4, 6, 8);

  private final PlanIndex index;
  private final VehiclePlan plan;
  private final Wiring wiring;
  private final List<VehicleFault> found = new ArrayList<>();

  FaultList(PlanIndex index, Run run) {
    this.index = index;
    this.plan = index.plan();
    wiring = new Wiring(run);
  }

  /** All faults of some channels, and of the supply of some amplifiers. */
  List<VehicleFault> of(List<Integer> channels, List<Integer> amplifiers) {
    found.clear();
    for (int c : channels) {
      polarity(c);
      swapped(c, channels);
      filters(c);
      for (PlanIndex.NamedCoil coil : index.coils(c)) {
        coil(c, coil.word());
      }
      wired(c);
      index.driversOf(c).forEach(d -> leak(c, d));
      add(FaultKind.GAIN_OFF, "gain/" + c, c, null, GAINS_DB, same(), FaultLineBuilder::gainDb);
    }
    for (int a : amplifiers) {
      found.add(
          new VehicleFault(
              FaultKind.GROUND_RESISTANCE,
              "joint/" + a,
              List.of(),
              a,
              null,
              JOINTS,
              same(),
              (line, lg) -> line.jointOhm(Math.pow(10, lg))));
    }
    return List.copyOf(found);
  }

  /** What no plan can have. */
  private static VehicleFault.Change same() {
    return (any, figure) -> any;
  }

  private void add(
      FaultKind kind,
      String thing,
      int c,
      String part,
      VehicleFault.Range range,
      VehicleFault.Change change,
      VehicleFault.Told told) {
    found.add(new VehicleFault(kind, thing, List.of(c), -1, part, range, change, told));
  }

  private static <T> List<T> replaced(List<T> all, int at, T other) {
    List<T> changed = new ArrayList<>(all);
    changed.set(at, other);
    return changed;
  }

  /** Changes one channel of whatever plan it is. */
  private static VehiclePlan with(VehiclePlan any, int c, UnaryOperator<PlannedChannel> change) {
    PlannedChannel changed = change.apply(any.channels().get(c));
    return VehiclePlanBuilder.builder(any).channels(replaced(any.channels(), c, changed)).build();
  }

  private void polarity(int c) {
    add(
        FaultKind.POLARITY_INVERTED,
        "polarity/" + c,
        c,
        null,
        VehicleFault.Range.NONE,
        (any, figure) ->
            with(
                any,
                c,
                one -> PlannedChannelBuilder.builder(one).polarity(-one.polarity()).build()),
        UNTOLD);
  }

  /** Each pair of channels once, also where only one of them is looked at. */
  private void swapped(int c, List<Integer> lookedAt) {
    for (int other = 0; other < plan.channels().size(); other++) {
      boolean near = index.amplifierOf(c) == index.amplifierOf(other) || index.isPair(c, other);
      boolean met = other < c && lookedAt.contains(other);
      if (other != c && near && !met) {
        int one = Math.min(c, other);
        int two = Math.max(c, other);
        found.add(
            new VehicleFault(
                FaultKind.WIRES_SWAPPED,
                "wires/" + one + "/" + two,
                List.of(one, two),
                -1,
                null,
                VehicleFault.Range.NONE,
                (any, figure) -> exchanged(any, one, two),
                UNTOLD));
      }
    }
  }

  private static VehiclePlan exchanged(VehiclePlan any, int one, int two) {
    PlannedChannel first = any.channels().get(one);
    PlannedChannel second = any.channels().get(two);
    return with(
        with(any, one, channel -> withLoadOf(channel, second)),
        two,
        channel -> withLoadOf(channel, first));
  }

  /** The outputs of a channel with the wires of another on them. */
  private static PlannedChannel withLoadOf(PlannedChannel channel, PlannedChannel other) {
    return PlannedChannelBuilder.builder(channel)
        .network(other.network())
        .branches(other.branches())
        .cable(other.cable())
        .polarity(other.polarity())
        .build();
  }

  /** A channel with another filter in the place of one. */
  private interface Refitted {
    PlannedChannel with(PlannedChannel channel, Filter filter);
  }

  private void filters(int c) {
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
    add(
        kinds.get(0),
        thing,
        c,
        null,
        VehicleFault.Range.NONE,
        (any, figure) -> with(any, c, one -> refitted.with(one, null)),
        UNTOLD);
    add(
        kinds.get(1),
        thing,
        c,
        null,
        OCTAVES,
        (any, octaves) -> with(any, c, one -> refitted.with(one, moved(is, octaves))),
        (line, octaves) -> line.cornerHz(moved(is, octaves).frequencyHz()));
    List<Filter> others =
        ORDERS.stream()
            .filter(order -> !order.equals(is.order()))
            .map(order -> new Filter(is.kind(), order, is.frequencyHz(), is.besselNormalisation()))
            .filter(Filter::possible)
            .toList();
    add(
        kinds.get(2),
        thing,
        c,
        null,
        VehicleFault.Range.oneOf(others.size()),
        (any, i) -> with(any, c, one -> refitted.with(one, others.get((int) i))),
        (line, i) -> line.filterOrder(others.get((int) i).order()));
  }

  private static Filter moved(Filter filter, double octaves) {
    double hz = filter.frequencyHz() * Math.pow(2, octaves);
    return new Filter(filter.kind(), filter.order(), hz, filter.besselNormalisation());
  }

  private void coil(int c, String word) {
    add(
        FaultKind.COIL_OPEN,
        "coil/" + word,
        c,
        word,
        VehicleFault.Range.NONE,
        (any, figure) -> rewired(any, word, network -> wiring.opened(network, word)),
        UNTOLD);
    add(
        FaultKind.COIL_SHORTED,
        "coil/" + word,
        c,
        word,
        VehicleFault.Range.NONE,
        (any, figure) -> rewired(any, word, network -> wiring.shorted(network, word)),
        UNTOLD);
  }

  /** Changes the network that a coil is in, on whatever channel that hangs. */
  private VehiclePlan rewired(VehiclePlan any, String coil, UnaryOperator<String> change) {
    for (int c = 0; c < any.channels().size(); c++) {
      PlannedChannel channel = any.channels().get(c);
      if (wiring.has(channel.network(), coil)) {
        return with(
            any,
            c,
            one -> PlannedChannelBuilder.builder(one).network(change.apply(one.network())).build());
      }
      for (int b = 0; b < channel.branchList().size(); b++) {
        Branch branch = channel.branchList().get(b);
        if (wiring.has(branch.network(), coil)) {
          Branch changed =
              BranchBuilder.builder(branch).network(change.apply(branch.network())).build();
          return withBranch(any, c, b, changed);
        }
      }
    }
    return any;
  }

  private static VehiclePlan withBranch(VehiclePlan any, int c, int b, Branch branch) {
    return with(
        any,
        c,
        one ->
            PlannedChannelBuilder.builder(one)
                .branches(replaced(one.branchList(), b, branch))
                .build());
  }

  private void wired(int c) {
    PlannedChannel channel = plan.channels().get(c);
    if (channel.network() != null) {
      otherwise(c, channel.network());
    }
    for (int b = 0; b < channel.branchList().size(); b++) {
      Branch branch = channel.branchList().get(b);
      otherwise(c, branch.network());
      bridged(c, b, branch);
    }
  }

  private void otherwise(int c, String network) {
    List<String> others = wiring.otherwise(network);
    String coil =
        index.coils(c).stream()
            .map(PlanIndex.NamedCoil::word)
            .filter(word -> wiring.has(network, word))
            .findFirst()
            .orElse(null);
    if (!others.isEmpty() && coil != null) {
      add(
          FaultKind.WIRED_OTHERWISE,
          "wiring/" + coil,
          c,
          null,
          VehicleFault.Range.oneOf(others.size()),
          (any, i) -> rewired(any, coil, planned -> others.get((int) i)),
          (line, i) -> line.wiredAs(others.get((int) i)));
    }
  }

  private void bridged(int c, int b, Branch branch) {
    boolean plain = branch.ladder().isEmpty() && branch.padDb() == null;
    if (plain && branch.highPass() == null && branch.lowPass() == null) {
      return;
    }
    add(
        FaultKind.CROSSOVER_BRIDGED,
        "branch/" + c + "/" + b,
        c,
        branch.band(),
        VehicleFault.Range.NONE,
        (any, figure) ->
            any.channels().get(c).branchList().size() <= b
                ? any
                : withBranch(any, c, b, bare(any.channels().get(c).branchList().get(b))),
        UNTOLD);
  }

  private static Branch bare(Branch branch) {
    return BranchBuilder.builder().band(branch.band()).network(branch.network()).build();
  }

  private void leak(int c, int d) {
    PlacedDriver driver = plan.drivers().get(d);
    Box box = driver.enclosure() == null ? null : driver.enclosure().closed();
    double tight = box == null || box.ql() == null ? Double.POSITIVE_INFINITY : box.ql();
    List<Double> leaking = LEAKING_QL.stream().filter(ql -> ql < tight).toList();
    if (box == null || leaking.isEmpty()) {
      return;
    }
    add(
        FaultKind.BOX_LEAKS,
        "box/" + d,
        c,
        driver.id(),
        VehicleFault.Range.oneOf(leaking.size()),
        (any, i) -> leaking(any, d, box, leaking.get((int) i)),
        UNTOLD);
  }

  private static VehiclePlan leaking(VehiclePlan any, int d, Box box, double ql) {
    Enclosure enclosure = new Enclosure(BoxBuilder.builder(box).ql(ql).build(), null, null);
    PlacedDriver wrong =
        PlacedDriverBuilder.builder(any.drivers().get(d)).enclosure(enclosure).build();
    return VehiclePlanBuilder.builder(any).drivers(replaced(any.drivers(), d, wrong)).build();
  }
}
