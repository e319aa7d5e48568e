package org.footwell.acoustic.crossover;

import java.util.ArrayList;
import java.util.List;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;

/**
 * The ways of one side of a plan, or those beside one crossover, at the level the plan plays: that of the
 * loudest channel above the lowest.
 */
final class CrossoverOfPlan {

  private final PlanReader plan;
  private final PlannedWays planned;
  private final List<Integer> channels;

  CrossoverOfPlan(PlanReader plan) {
    this.plan = plan;
    planned = new PlannedWays(plan.index());
    channels = plan.handingOver();
  }

  CrossoverPlanRequest request() {
    List<Integer> drivers = drivers();
    plan.poses(drivers.size() < 2 ? null : drivers, "/crossovers");
    plan.called("/distance_m", "/vehicle/cabin/critical_distance_m");
    return CrossoverPlanRequestBuilder.builder()
        .ways(drivers.stream().map(this::way).toList())
        .wantedLevelDbSpl(levelDbSpl())
        .distanceM(plan.plan().vehicle().cabin().criticalDistanceM())
        .crestFactorDb(plan.crestFactorDb("/crest_factor_db"))
        .temperatureC(plan.temperatureC())
        .build();
  }

  /** At a crossover the lower channel plays with its highest driver, the upper with its lowest. */
  private List<Integer> drivers() {
    List<List<Integer>> ways = channels.stream().map(planned::of).toList();
    return plan.about().kind() == PlanPlace.CROSSOVER
        ? List.of(ways.get(0).get(ways.get(0).size() - 1), ways.get(1).get(0))
        : ways.stream().flatMap(List::stream).toList();
  }

  private CrossoverWay way(int driver) {
    return plan.made(
        CrossoverWayBuilder.builder(planned.way(driver)).driver(plan.joined(driver)).build(),
        PlanIndex.driverAt(driver));
  }

  private Double levelDbSpl() {
    List<Integer> above =
        channels.size() < 2 ? channels : new ArrayList<>(channels.subList(1, channels.size()));
    Double loudest = null;
    for (int channel : above) {
      Double level = plan.figures().sineDbSpl(channel);
      if (level == null) {
        plan.called("/wanted_level_db_spl", unheard(channel));
        return null;
      }
      if (loudest == null || level > loudest) {
        loudest = level;
        plan.called("/wanted_level_db_spl", PlanReader.channelAt(channel));
      }
    }
    return loudest;
  }

  /** What has to be known before a level can be told. */
  private String unheard(int channel) {
    return plan.index().driversOf(channel).stream()
        .filter(driver -> plan.driver(driver).sensitivity() == null)
        .map(driver -> plan.index().partAt(driver) + "/driver/sensitivity")
        .findFirst()
        .orElseThrow();
  }
}
