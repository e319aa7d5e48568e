package org.footwell.vehicle.faults;

import java.util.List;
import java.util.function.UnaryOperator;
import org.footwell.calculation.Run;
import org.footwell.parts.plan.Branch;
import org.footwell.parts.plan.BranchBuilder;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.PlannedChannelBuilder;
import org.footwell.parts.plan.Plans;
import org.footwell.parts.plan.VehiclePlan;

/** What may be wrong between the terminals of a loudspeaker and its voice coils. */
final class WiringFaults {

  private final PlanIndex index;
  private final Wiring wiring;
  private final List<VehicleFault> into;

  WiringFaults(PlanIndex index, List<VehicleFault> into, Run run) {
    this.index = index;
    this.into = into;
    wiring = new Wiring(run);
  }

  void of(int c) {
    for (PlanIndex.NamedCoil coil : index.coils(c)) {
      coil(c, coil.word());
    }
    PlannedChannel channel = index.plan().channels().get(c);
    if (channel.network() != null) {
      otherwise(c, channel.network());
    }
    for (int b = 0; b < channel.branchList().size(); b++) {
      Branch branch = channel.branchList().get(b);
      otherwise(c, branch.network());
      bridged(c, b, branch);
    }
  }

  private void coil(int c, String word) {
    into.add(
        VehicleFault.of(
            FaultKind.COIL_OPEN,
            "coil/" + word,
            c,
            word,
            any -> rewired(any, word, network -> wiring.opened(network, word))));
    into.add(
        VehicleFault.of(
            FaultKind.COIL_SHORTED,
            "coil/" + word,
            c,
            word,
            any -> rewired(any, word, network -> wiring.shorted(network, word))));
  }

  /** Changes the network that a coil is in, on whatever channel that hangs. */
  private VehiclePlan rewired(VehiclePlan any, String coil, UnaryOperator<String> change) {
    for (int c = 0; c < any.channels().size(); c++) {
      PlannedChannel channel = any.channels().get(c);
      if (wiring.has(channel.network(), coil)) {
        return Plans.channel(
            any,
            c,
            one -> PlannedChannelBuilder.builder(one).network(change.apply(one.network())).build());
      }
      for (int b = 0; b < channel.branchList().size(); b++) {
        if (wiring.has(channel.branchList().get(b).network(), coil)) {
          return Plans.branch(
              any,
              c,
              b,
              one -> BranchBuilder.builder(one).network(change.apply(one.network())).build());
        }
      }
    }
    return any;
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
      into.add(
          VehicleFault.of(
              FaultKind.WIRED_OTHERWISE,
              "wiring/" + coil,
              c,
              null,
              VehicleFault.Range.oneOf(others.size()),
              (any, i) -> rewired(any, coil, planned -> others.get((int) i)),
              (line, i) -> line.wiredAs(others.get((int) i))));
    }
  }

  private void bridged(int c, int b, Branch branch) {
    boolean plain = branch.ladder().isEmpty() && branch.padDb() == null;
    if (plain && branch.highPass() == null && branch.lowPass() == null) {
      return;
    }
    into.add(
        VehicleFault.of(
            FaultKind.CROSSOVER_BRIDGED,
            "branch/" + c + "/" + b,
            c,
            branch.band(),
            any ->
                any.channels().get(c).branchList().size() <= b
                    ? any
                    : Plans.branch(any, c, b, WiringFaults::bare)));
  }

  private static Branch bare(Branch branch) {
    return BranchBuilder.builder().band(branch.band()).network(branch.network()).build();
  }
}
