package org.footwell.electrical.supply;

import org.footwell.parts.plan.AmplifierFeed;
import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.PlannedAmplifier;

/** The supply cable of an amplifier of a plan, loaded by what flows for minutes. */
final class CableOfPlan {

  private final PlanReader plan;
  private final PlannedAmplifier amplifier;
  private final String at;

  CableOfPlan(PlanReader plan) {
    this.plan = plan;
    this.at = plan.about().pointer();
    this.amplifier = plan.plan().amplifiers().get(plan.about().index());
  }

  SupplyCableRequest request() {
    AmplifierFeed feed = plan.poses(amplifier.feed(), at + "/feed");
    plan.also(at + "/feed", "/programme");
    plan.called("/amplifier_fuse_a", at + "/fuse_a");
    plan.called("/constant_power", at + "/draw");
    plan.called("/full_sine_a", at + "/draw");
    Double supply = plan.needs(plan.engineV("/supply_v"), "/supply");
    DrawOfPlan draw = DrawOfPlan.of(plan.about().index(), plan);
    boolean known = draw != null && supply != null;
    if (feed == null) {
      return SupplyCableRequestBuilder.builder().build();
    }
    return SupplyCableRequestBuilder.builder()
        .supplyV(supply)
        .constantPower(known ? new SupplyCableRequest.ConstantPower(draw.lastingW(), 1.0) : null)
        .cable(feed.cable())
        .returnPath(feed.returnPath())
        .bodyOhm(feed.bodyOhm())
        .contactsOhm(feed.contactsOhm())
        .permittedDropV(feed.permittedDropV())
        .fuseDistanceM(feed.fuseDistanceM())
        .amplifierFuseA(amplifier.fuseA())
        .fullSineA(plan.figures().fullSineA(plan.about().index()))
        .sustainedBass(plan.plan().programme().sustainedBass())
        .build();
  }
}
