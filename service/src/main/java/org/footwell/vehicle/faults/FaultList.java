package org.footwell.vehicle.faults;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.parts.Box;
import org.footwell.parts.BoxBuilder;
import org.footwell.parts.plan.Enclosure;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlacedDriverBuilder;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.PlannedChannelBuilder;
import org.footwell.parts.plan.Plans;
import org.footwell.parts.plan.VehiclePlan;

/** Everything that may be wrong in a vehicle, each as a change of its plan. */
final class FaultList {

  /** Q of the leaks of boxes that are not tight, as ratios; this and below: common practice, no source. */
  private static final List<Double> LEAKING_QL = List.of(1.0, 2.0, 4.0);

  /** Gains that are off, dB. */
  private static final VehicleFault.Range GAINS_DB = VehicleFault.Range.around(0, 6, -30, 30, 10);

  private final PlanIndex index;
  private final VehiclePlan plan;
  private final Run run;
  private final List<VehicleFault> found = new ArrayList<>();

  FaultList(PlanIndex index, Run run) {
    this.index = index;
    this.plan = index.plan();
    this.run = run;
  }

  /** All faults of some channels, and of the supply of some amplifiers. */
  List<VehicleFault> of(List<Integer> channels, List<Integer> amplifiers) {
    found.clear();
    FilterFaults filters = new FilterFaults(plan, found);
    WiringFaults wires = new WiringFaults(index, found, run);
    for (int c : channels) {
      polarity(c);
      swapped(c, channels);
      filters.of(c);
      wires.of(c);
      index.driversOf(c).forEach(d -> leak(c, d));
      gain(c);
    }
    amplifiers.forEach(this::joint);
    return List.copyOf(found);
  }

  private void polarity(int c) {
    found.add(
        VehicleFault.of(
            FaultKind.POLARITY_INVERTED,
            "polarity/" + c,
            c,
            null,
            any ->
                Plans.channel(
                    any,
                    c,
                    one -> PlannedChannelBuilder.builder(one).polarity(-one.polarity()).build())));
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
                (line, figure) -> {}));
      }
    }
  }

  private static VehiclePlan exchanged(VehiclePlan any, int one, int two) {
    PlannedChannel first = any.channels().get(one);
    PlannedChannel second = any.channels().get(two);
    VehiclePlan half = Plans.channel(any, one, channel -> withLoadOf(channel, second));
    return Plans.channel(half, two, channel -> withLoadOf(channel, first));
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

  private void leak(int c, int d) {
    PlacedDriver driver = plan.drivers().get(d);
    Box box = driver.enclosure() == null ? null : driver.enclosure().closed();
    double tight = box == null || box.ql() == null ? Double.POSITIVE_INFINITY : box.ql();
    List<Double> leaking = LEAKING_QL.stream().filter(ql -> ql < tight).toList();
    if (box == null || leaking.isEmpty()) {
      return;
    }
    found.add(
        VehicleFault.of(
            FaultKind.BOX_LEAKS,
            "box/" + d,
            c,
            driver.id(),
            VehicleFault.Range.oneOf(leaking.size()),
            (any, i) -> Plans.driver(any, d, one -> leaking(one, box, leaking.get((int) i))),
            (line, i) -> {}));
  }

  private static PlacedDriver leaking(PlacedDriver driver, Box box, double ql) {
    Enclosure enclosure = new Enclosure(BoxBuilder.builder(box).ql(ql).build(), null, null);
    return PlacedDriverBuilder.builder(driver).enclosure(enclosure).build();
  }

  /** No plan can have it. */
  private void gain(int c) {
    found.add(
        VehicleFault.of(
            FaultKind.GAIN_OFF,
            "gain/" + c,
            c,
            null,
            GAINS_DB,
            (any, db) -> any,
            FaultLineBuilder::gainDb));
  }

  /** Nor this. */
  private void joint(int a) {
    found.add(
        new VehicleFault(
            FaultKind.GROUND_RESISTANCE,
            "joint/" + a,
            List.of(),
            a,
            null,
            JointResistance.RANGE,
            (any, figure) -> any,
            (line, figure) -> line.jointOhm(JointResistance.ohm(figure))));
  }
}
