package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.footwell.calculation.Run;
import org.footwell.electrical.load.NetworkReader;
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

/** The short, fixed list of what goes wrong in a vehicle, each as the plan with that one change. */
final class Suspects {

  /** Q of the leaks of a box that is not tight, as a ratio; common practice, no source. */
  private static final double LEAKING_QL = 2;

  private final PlanIndex index;
  private final VehiclePlan plan;
  private final Run run;
  private final List<Suspect> found = new ArrayList<>();

  Suspects(PlanIndex index, Run run) {
    this.index = index;
    this.plan = index.plan();
    this.run = run;
  }

  /** All of one channel but its gain. */
  List<Suspect> of(int c) {
    found.clear();
    PlannedChannel channel = plan.channels().get(c);
    add(
        LikelyCause.POLARITY_INVERTED,
        c,
        null,
        null,
        PlannedChannelBuilder.builder(channel).polarity(-channel.polarity()).build());
    swapped(c);
    filters(c, channel);
    coils(c, channel);
    for (int d : index.driversOf(c)) {
      leak(c, d);
    }
    return List.copyOf(found);
  }

  private void add(LikelyCause cause, int c, String what, Double figure, PlannedChannel wrong) {
    found.add(new Suspect(cause, List.of(c), what, figure, with(c, wrong)));
  }

  private VehiclePlan with(int c, PlannedChannel wrong) {
    return VehiclePlanBuilder.builder(plan).channels(replaced(plan.channels(), c, wrong)).build();
  }

  private static <T> List<T> replaced(List<T> all, int at, T other) {
    List<T> changed = new ArrayList<>(all);
    changed.set(at, other);
    return changed;
  }

  private void swapped(int c) {
    for (int other = 0; other < plan.channels().size(); other++) {
      boolean near = index.amplifierOf(c) == index.amplifierOf(other) || index.isPair(c, other);
      if (other != c && near) {
        PlannedChannel one = plan.channels().get(c);
        PlannedChannel two = plan.channels().get(other);
        List<PlannedChannel> channels = replaced(plan.channels(), c, withLoadOf(one, two));
        channels.set(other, withLoadOf(two, one));
        found.add(
            new Suspect(
                LikelyCause.WIRES_SWAPPED,
                List.of(Math.min(c, other), Math.max(c, other)),
                null,
                null,
                VehiclePlanBuilder.builder(plan).channels(channels).build()));
      }
    }
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

  private void filters(int c, PlannedChannel channel) {
    filter(
        c,
        channel.highPass(),
        LikelyCause.HIGH_PASS_MISSING,
        LikelyCause.HIGH_PASS_OFF,
        filter -> PlannedChannelBuilder.builder(channel).highPass(filter).build());
    filter(
        c,
        channel.lowPass(),
        LikelyCause.LOW_PASS_MISSING,
        LikelyCause.LOW_PASS_OFF,
        filter -> PlannedChannelBuilder.builder(channel).lowPass(filter).build());
  }

  /** A channel with another filter in the place of one. */
  private interface Refitted {
    PlannedChannel with(Filter filter);
  }

  private void filter(
      int c, Filter planned, LikelyCause missing, LikelyCause off, Refitted channel) {
    if (planned == null) {
      return;
    }
    add(missing, c, null, null, channel.with(null));
    for (double octave : new double[] {0.5, 2}) {
      double hz = planned.frequencyHz() * octave;
      Filter moved = new Filter(planned.kind(), planned.order(), hz, planned.besselNormalisation());
      add(off, c, null, hz, channel.with(moved));
    }
  }

  private void coils(int c, PlannedChannel channel) {
    for (PlanIndex.NamedCoil coil : index.coils(c)) {
      PlannedChannel wrong =
          channel.network() == null
              ? withoutInBranch(c, channel, coil)
              : without(channel.network(), "/channels/" + c + "/network", coil)
                  .map(left -> PlannedChannelBuilder.builder(channel).network(left).build())
                  .orElse(null);
      if (wrong != null) {
        add(LikelyCause.COIL_OPEN, c, coil.word(), null, wrong);
      }
    }
  }

  private Optional<String> without(String network, String at, PlanIndex.NamedCoil open) {
    return NetworkReader.words(network, at, run)
        .only(word -> !word.equals(open.word()))
        .map(left -> left.text(UnaryOperator.identity()));
  }

  /** The channel without what an open coil cuts off; null where nothing is left. */
  private PlannedChannel withoutInBranch(int c, PlannedChannel channel, PlanIndex.NamedCoil open) {
    List<Branch> branches = new ArrayList<>(channel.branchList());
    Branch branch = branches.remove(open.branch());
    String at = "/channels/" + c + "/branches/" + open.branch() + "/network";
    without(branch.network(), at, open)
        .ifPresent(
            left ->
                branches.add(open.branch(), BranchBuilder.builder(branch).network(left).build()));
    return branches.isEmpty()
        ? null
        : PlannedChannelBuilder.builder(channel).branches(branches).build();
  }

  private void leak(int c, int d) {
    PlacedDriver driver = plan.drivers().get(d);
    Box box = driver.enclosure() == null ? null : driver.enclosure().closed();
    if (box == null || (box.ql() != null && box.ql() <= LEAKING_QL)) {
      return;
    }
    Enclosure leaking = new Enclosure(BoxBuilder.builder(box).ql(LEAKING_QL).build(), null, null);
    PlacedDriver wrong = PlacedDriverBuilder.builder(driver).enclosure(leaking).build();
    found.add(
        new Suspect(
            LikelyCause.BOX_LEAKS,
            List.of(c),
            driver.id(),
            null,
            VehiclePlanBuilder.builder(plan).drivers(replaced(plan.drivers(), d, wrong)).build()));
  }
}
