package org.footwell.acoustic.crossover;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.footwell.parts.Box;
import org.footwell.parts.Driver;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.physics.Decibels;
import org.footwell.physics.SensitivityBases;
import org.footwell.physics.ThieleSmall;

/**
 * The ways of one side of a plan, or those beside one crossover, at the level that all of them reach:
 * the lowest of what each gives at 1 m with the clean power it gets.
 */
final class CrossoverOfPlan {

  private final PlanReader plan;
  private final List<Integer> drivers;

  CrossoverOfPlan(PlanReader plan) {
    this.plan = plan;
    List<List<Integer>> channels = new ArrayList<>();
    for (int channel : plan.handingOver()) {
      channels.add(ways(channel));
    }
    this.drivers =
        plan.about().kind() == PlanPlace.CROSSOVER
            ? List.of(last(channels.get(0)), channels.get(1).get(0))
            : channels.stream().flatMap(List::stream).toList();
  }

  /** One driver of each band of a channel, from low to high. */
  private List<Integer> ways(int channel) {
    PlannedChannel planned = plan.plan().channels().get(channel);
    List<PlanIndex.NamedCoil> coils = plan.index().coils(channel);
    if (planned.branchList().isEmpty()) {
      return List.of(coils.get(0).driver());
    }
    List<Integer> ways = new ArrayList<>();
    for (int b = 0; b < planned.branchList().size(); b++) {
      int branch = b;
      ways.add(
          coils.stream()
              .filter(coil -> coil.branch() == branch)
              .findFirst()
              .orElseThrow()
              .driver());
    }
    return ways;
  }

  private static int last(List<Integer> list) {
    return list.get(list.size() - 1);
  }

  CrossoverPlanRequest request() {
    plan.poses(drivers.size() < 2 ? null : drivers, "/crossovers");
    List<CrossoverWay> ways = new ArrayList<>();
    List<Double> levels = new ArrayList<>();
    for (int driver : drivers) {
      ways.add(way(driver));
      levels.add(levelDbSpl(driver));
    }
    return CrossoverPlanRequestBuilder.builder()
        .ways(ways)
        .wantedLevelDbSpl(levels.contains(null) ? null : Collections.min(levels))
        .crestFactorDb(plan.crestFactorDb("/crest_factor_db"))
        .temperatureC(plan.temperatureC())
        .build();
  }

  private CrossoverWay way(int driver) {
    return plan.made(
        CrossoverWayBuilder.builder()
            .id(plan.plan().drivers().get(driver).id())
            .role(plan.index().roleOf(driver))
            .driver(plan.driver(driver))
            .fcHz(closedHz(driver))
            .build(),
        PlanIndex.driverAt(driver));
  }

  /** Resonance in its closed box, Hz; null without one or where it cannot be told. */
  private Double closedHz(int driver) {
    Box box = plan.box(driver);
    Driver data = plan.driver(driver);
    if (box == null || box.fbHz() != null || data.vasL() == null || data.fsHz() == null) {
      return null;
    }
    double alpha = ThieleSmall.COMPLIANCE_RATIO.at(data.vasL(), box.volumeL() * box.fill());
    return ThieleSmall.IN_CLOSED_BOX.at(data.fsHz(), alpha);
  }

  private Double levelDbSpl(int driver) {
    String at = plan.index().partAt(driver) + "/driver/sensitivity";
    Sensitivity sensitivity = plan.needs(plan.driver(driver).sensitivity(), at);
    Double power = plan.cleanPowerW(driver, "/wanted_level_db_spl");
    if (sensitivity == null || power == null) {
      plan.called("/wanted_level_db_spl", at);
      return null;
    }
    double difference =
        SensitivityBases.BASIS_DIFFERENCE.at(plan.index().part(driver).sensitivityLoadOhm());
    return sensitivity.oneWattDbSpl(difference) + Decibels.ofPower(power);
  }
}
