package org.footwell.acoustic.crossover;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.acoustic.crossover.CrossoverPlanRequest.ProgrammeKind;
import org.footwell.acoustic.crossover.CrossoverPlanResult.PlannedCrossover;
import org.footwell.acoustic.crossover.CrossoverPlanResult.ProtectionCapacitor;
import org.footwell.acoustic.crossover.CrossoverPlanResult.WayShare;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.FilterFault;
import org.footwell.parts.PreferredSeries;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.physics.Air;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.FilterPrototype;
import org.footwell.physics.Piston;
import org.footwell.physics.PointSource;
import org.footwell.physics.ProgrammeSpectrum;
import org.footwell.physics.SensitivityBases;
import org.footwell.physics.ThieleSmall;

/** Where to part the bands between the ways of a system, with which slope, and what each gets. */
public final class CrossoverPlan
    implements Calculation<CrossoverPlanRequest, CrossoverPlanResult>,
        AskOfPlan<CrossoverPlanRequest> {

  private static final Card<CrossoverPlanRequest, CrossoverPlanResult> CARD =
      Card.of("crossover-plan", CrossoverPlanRequest.class, CrossoverPlanResult.class)
          .title("Crossover frequencies and slopes")
          .purpose(
              "How low and how high each crossover may lie and why, which frequency and slope to"
                  + " take so that no driver moves too far at the wanted level, what each way gets"
                  + " of the programme's power, and the capacitor that protects a tweeter.")
          .example(
              """
              {"ways": [
                 {"id": "sub", "role": "subwoofer", "fc_hz": 42,
                  "driver": {"sd_cm2": 520, "fs_hz": 28, "qts": 0.45, "xmax_mm": 12,
                    "rated_ohm": 4, "re_ohm": 3.4, "continuous_power_w": 400,
                    "sensitivity": {"level_db_spl": 86, "basis": "one_watt"}}},
                 {"id": "door", "role": "woofer",
                  "driver": {"sd_cm2": 137, "fs_hz": 60, "qts": 0.6, "xmax_mm": 5,
                    "rated_ohm": 4, "re_ohm": 3.3, "continuous_power_w": 80,
                    "sensitivity": {"level_db_spl": 91,
                      "basis": "two_point_eight_three_volt"}}},
                 {"id": "tweeter", "role": "tweeter",
                  "driver": {"sd_cm2": 6.2, "fs_hz": 1100, "qts": 0.8, "xmax_mm": 0.4,
                    "rated_ohm": 4, "re_ohm": 3.4, "continuous_power_w": 30,
                    "sensitivity": {"level_db_spl": 92,
                      "basis": "two_point_eight_three_volt"}}}],
               "wanted_level_db_spl": 103, "crest_factor_db": 12, "kind": "linkwitz_riley",
               "orders": [2, 4], "protection": {"ratio": 2, "series": "e6"}}
              """)
          .sources(
              Piston.HALF_SPACE,
              ThieleSmall.SMALL_CLOSED,
              FilterPrototype.BUTTERWORTH,
              FilterPrototype.LINKWITZ,
              FilterPrototype.THOMSON,
              ProgrammeSpectrum.IEC_60268_1,
              SensitivityBases.IEC_60268_5,
              Air.ISO_9613_1,
              PointSource.INVERSE_SQUARE,
              SeriesCapacitor.FIRST_ORDER,
              AnalogFilter.SECTION,
              PreferredSeries.IEC_60063,
              Source.DEFINITION,
              Source.COMMON_PRACTICE)
          .limits(
              "One driver per way and side, in half space; what the cabin adds, and what both"
                  + " sides add together, makes the real displacement smaller.",
              "Displacement is that of a rigid piston below ka 1, driven by one sine at the wanted"
                  + " level; music of the same peak level moves it less at any one frequency.",
              "Filters are electrical, in front of drivers that are flat above their resonance;"
                  + " vented boxes and passive networks with the real impedance are not in it.",
              "Beaming is judged by the circumference of the cone; real cones break up and narrow"
                  + " differently. Steep filters and off-axis listening need a measurement.",
              "Programme is an average of many kinds: bass-heavy or clipped music gives the"
                  + " lowest, or the highest way more than its part.",
              "Power is without compression, and heat without time: a coil stands its continuous"
                  + " power only as its data sheet measured it.")
          .findings(CrossoverFinding.values())
          .refusals(FilterFault.values())
          .cautions(Safety.HEARING, Safety.HEAT, Safety.FIRE)
          .build();

  @Override
  public Card<CrossoverPlanRequest, CrossoverPlanResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.CROSSOVER, PlanPlace.CHANNEL);
  }

  @Override
  public CrossoverPlanRequest ask(PlanReader plan) {
    return new CrossoverOfPlan(plan).request();
  }

  @Override
  public CrossoverPlanResult compute(CrossoverPlanRequest q, Run run) {
    PlanFrame frame =
        PlanFrame.of(q.ways(), CrossoverScope.of(q), wanted(q), q.temperatureC(), run);
    List<WayModel> ways =
        IntStream.range(0, q.ways().size()).mapToObj(i -> WayModel.of(i, frame, run)).toList();
    CrossoverLimits limits = new CrossoverLimits(frame, ways, run);
    List<PlannedCrossover> crossovers = new ArrayList<>();
    for (int i = 1; i < ways.size(); i++) {
      WayModel lower = ways.get(i - 1);
      WayModel upper = ways.get(i);
      crossovers.add(
          new CrossoverChoice(frame, lower, upper, run)
              .of(limits.lowLimits(upper), limits.highLimits(lower)));
    }
    List<WayShare> shares =
        new WayShares(frame, crossovers, run).of(ways, q.totalPowerW(), q.crestFactorDb());
    CrossoverRules rules = new CrossoverRules(frame, ways, run);
    rules.judge(crossovers, shares);
    PlannedCrossover first = crossovers.get(0);
    PlannedCrossover last = crossovers.get(crossovers.size() - 1);
    return new CrossoverPlanResult(
        first.frequencyHz(),
        first.order(),
        last.frequencyHz(),
        last.order(),
        crossovers,
        shares,
        protection(q, last, rules, run));
  }

  private static WantedLevel wanted(CrossoverPlanRequest q) {
    ProgrammeSpectrum spectrum =
        q.programme() == ProgrammeKind.PINK
            ? ProgrammeSpectrum.pink(q.pinkFromHz(), q.pinkToHz())
            : ProgrammeSpectrum.simulated();
    return new WantedLevel(q.wantedLevelDbSpl(), q.distanceM(), q.crestFactorDb(), spectrum);
  }

  private static ProtectionCapacitor protection(
      CrossoverPlanRequest q, PlannedCrossover last, CrossoverRules rules, Run run) {
    if (q.protection() == null || last.frequencyHz() == null) {
      return null;
    }
    CrossoverWay way = q.ways().get(q.ways().size() - 1);
    ProtectionCapacitor capacitor =
        SeriesCapacitor.of(
            way.id(),
            way.driver().ratedOhm(),
            last.frequencyHz(),
            q.protection().ratio(),
            q.protection().series(),
            run);
    rules.capacitor(capacitor, way);
    return capacitor;
  }
}
