package org.footwell.vehicle.reading;

import java.util.Set;
import java.util.stream.Collectors;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.electrical.load.NetworkReader;
import org.footwell.parts.plan.ChannelSettings;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.chain.FilterChain;

/** What cannot be worked out of a plan that hangs together: all of it at once. */
public final class PlanRefusals {

  private PlanRefusals() {}

  /** Whatever makes it impossible to review a plan. */
  public static void check(VehiclePlan plan, Run run) {
    checkReferences(plan, run);
    checkValues(plan, run);
  }

  /** References that lead nowhere and networks that cannot be read. */
  public static void checkReferences(VehiclePlan plan, Run run) {
    PlanIndex.check(plan, run);
    for (int c = 0; c < plan.channels().size(); c++) {
      PlannedChannel channel = plan.channels().get(c);
      String at = "/channels/" + c;
      if (channel.network() != null) {
        NetworkReader.check(channel.network(), at + "/network", run);
      }
      for (int b = 0; b < channel.branchList().size(); b++) {
        String network = channel.branchList().get(b).network();
        NetworkReader.check(network, at + "/branches/" + b + "/network", run);
      }
    }
  }

  /** Values that nothing can be worked out of. */
  static void checkValues(VehiclePlan plan, Run run) {
    for (int c = 0; c < plan.channels().size(); c++) {
      channel(plan, c, run);
    }
    Set<String> boxed =
        plan.drivers().stream()
            .filter(driver -> driver.enclosure() != null)
            .map(PlacedDriver::part)
            .collect(Collectors.toSet());
    for (int p = 0; p < plan.newParts().size(); p++) {
      PlannedPart part = plan.newParts().get(p);
      if (boxed.contains(part.id())
          && part.driver().vasL() != null
          && part.driver().fsHz() == null) {
        run.refuse(CoreFault.REQUIRED).at("/new_parts/" + p + "/driver/fs_hz");
      }
    }
    for (int s = 0; s < plan.settings().size(); s++) {
      ChannelSettings set = plan.settings().get(s);
      if (set.gainV() != null && plan.signal() == null) {
        run.refuse(PlanRefusal.GAIN_WITHOUT_SIGNAL)
            .at("/settings/" + s + "/gain_v")
            .given(set.gainV());
      }
    }
  }

  private static void channel(VehiclePlan plan, int c, Run run) {
    PlannedChannel channel = plan.channels().get(c);
    if (channel.cable() != null) {
      channel.cable().requirePossible("/channels/" + c + "/cable", run);
    }
    double half = FilterChain.rateHz(plan) / 2;
    for (int f = 0; f < channel.equaliser().size(); f++) {
      if (channel.equaliser().get(f).frequencyHz() >= half) {
        run.refuse(PlanRefusal.EQUALISER_ABOVE_HALF_RATE)
            .at("/channels/" + c + "/equaliser/" + f + "/frequency_hz")
            .given(channel.equaliser().get(f).frequencyHz())
            .limit(half);
      }
    }
  }
}
