package org.footwell.vehicle.reading;

import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.parts.plan.ChannelSettings;
import org.footwell.parts.plan.Enclosure;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.VehiclePlan;

/** What cannot be worked out of a plan that hangs together: all of it at once. */
public final class PlanRefusals {

  private PlanRefusals() {}

  public static void require(PlanIndex index, Run run) {
    VehiclePlan plan = index.plan();
    for (int c = 0; c < plan.channels().size(); c++) {
      channel(index, c, run);
    }
    for (int d = 0; d < plan.drivers().size(); d++) {
      Enclosure enclosure = plan.drivers().get(d).enclosure();
      boolean boxed = enclosure != null;
      if (boxed && index.part(d).driver().vasL() != null && index.part(d).driver().fsHz() == null) {
        run.refuse(CoreFault.REQUIRED).at(index.partAt(d) + "/driver/fs_hz");
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
    run.requireNoFaults();
  }

  private static void channel(PlanIndex index, int c, Run run) {
    VehiclePlan plan = index.plan();
    PlannedChannel channel = plan.channels().get(c);
    if (channel.cable() != null) {
      channel.cable().requirePossible("/channels/" + c + "/cable", run);
    }
    double half = plan.processor() == null ? 24_000 : plan.processor().rateHz() / 2;
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
