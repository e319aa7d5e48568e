package org.footwell.electrical.supply;

import java.util.ArrayList;
import java.util.List;
import org.footwell.electrical.supply.SupplyBudgetRequest.SoundSystem;
import org.footwell.parts.plan.AmplifierFeed;
import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.VehicleSupply;

/** All amplifiers of a plan as one sound system on its alternator and battery. */
final class BudgetOfPlan {

  private final PlanReader plan;

  BudgetOfPlan(PlanReader plan) {
    this.plan = plan;
  }

  SupplyBudgetRequest request() {
    VehicleSupply supply = plan.poses(plan.plan().supply(), "/supply");
    plan.also("/supply", "/programme");
    plan.called("/system", "/amplifiers");
    plan.called("/depth", "/supply/battery/start_charge");
    if (supply == null || supply.alternator() == null) {
      plan.poses(null, "/supply/alternator");
      return SupplyBudgetRequestBuilder.builder().build();
    }
    return SupplyBudgetRequestBuilder.builder()
        .alternator(supply.alternator())
        .consumers(supply.consumers())
        .battery(supply.battery())
        .system(system())
        // One may listen until the engine would no longer start.
        .depth(1 - supply.battery().startCharge())
        .build();
  }

  /** Efficiencies and the cable as one amplifier would have them that draws and loses the same. */
  private SoundSystem system() {
    List<DrawOfPlan> draws = new ArrayList<>();
    double lossOhm = 0;
    double input = 0;
    Double minimum = null;
    boolean regulated = true;
    for (int a = 0; a < plan.plan().amplifiers().size(); a++) {
      PlannedAmplifier amplifier = plan.plan().amplifiers().get(a);
      DrawOfPlan draw = DrawOfPlan.of(a, plan);
      Double loop = loopOhm(amplifier.feed(), draw, PlanReader.amplifierAt(a) + "/feed");
      if (draw != null && loop != null) {
        draws.add(draw);
        lossOhm += draw.fullInputW() * draw.fullInputW() * loop;
        input += draw.fullInputW();
      }
      regulated &= amplifier.supplyRegulated();
      minimum = higher(minimum, amplifier.minimumV());
    }
    if (draws.size() < plan.plan().amplifiers().size()) {
      return null;
    }
    double clean = draws.stream().mapToDouble(DrawOfPlan::cleanW).sum();
    double mean = draws.stream().mapToDouble(DrawOfPlan::meanW).sum();
    double meanInput = draws.stream().mapToDouble(DrawOfPlan::meanInputW).sum();
    return SupplyBudgetRequestSoundSystemBuilder.builder()
        .cleanPowerW(clean)
        .supplyV(plan.figures().engineV())
        .supplyRegulated(regulated)
        .fullEfficiency(clean / input)
        .averageEfficiency(mean / meanInput)
        .idleA(draws.stream().mapToDouble(DrawOfPlan::idleA).sum())
        .levelDb(0.0)
        .crestFactorDb(plan.crestFactorDb("/system/crest_factor_db"))
        .supplyCableOhm(lossOhm / (input * input))
        .minimumV(minimum)
        .build();
  }

  private static Double higher(Double one, Double other) {
    return one == null || (other != null && other > one) ? other : one;
  }

  /** Of the whole feed, ohm, with the size that lies there or the smallest that does; or null. */
  private Double loopOhm(AmplifierFeed feed, DrawOfPlan draw, String at) {
    if (plan.needs(feed, at) == null || draw == null || plan.figures().engineV() == null) {
      return null;
    }
    FeedLine line =
        FeedLine.of(
            feed.cable(),
            feed.returnPath(),
            feed.contactsOhm() + (feed.bodyOhm() == null ? 0 : feed.bodyOhm()),
            feed.permittedDropV(),
            plan.figures().engineV(),
            draw.lastingW());
    Double area =
        feed.cable().areaMm2() != null || line.smallestMm2().isEmpty()
            ? feed.cable().areaMm2()
            : (Double) line.smallestMm2().getAsDouble();
    return plan.needs(area, at + "/cable/area_mm2") == null ? null : line.loopOhm(area);
  }
}
