package org.footwell.parts.plan;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** Of numbers alone a channel would be a resistor. */
@Check.Of(
    value = {"network", "branches.*.network"},
    says = "A driver is in the network, or in one of the branches.")
final class DriverOnChannel implements Check<PlannedChannel> {

  @Override
  public void check(PlannedChannel channel, Refusing to) {
    List<String> networks =
        channel.network() == null
            ? channel.branchList().stream().map(Branch::network).toList()
            : List.of(channel.network());
    if (!networks.isEmpty() && networks.stream().allMatch(PlannedCoils::ofNumbersOnly)) {
      to.refuse(PlanFault.CHANNEL_WITHOUT_DRIVER)
          .at(channel.network() == null ? "/branches" : "/network")
          .given(String.join("; ", networks));
    }
  }
}
