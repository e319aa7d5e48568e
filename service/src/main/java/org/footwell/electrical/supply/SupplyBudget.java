package org.footwell.electrical.supply;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.electrical.supply.SupplyBudgetRequest.SoundSystem;
import org.footwell.electrical.supply.SupplyBudgetResult.SupplyState;
import org.footwell.parts.Alternator;
import org.footwell.parts.Battery;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.physics.ConstantPower;

/** Whether alternator and battery bear a sound system. */
public final class SupplyBudget
    implements Calculation<SupplyBudgetRequest, SupplyBudgetResult>,
        AskOfPlan<SupplyBudgetRequest> {

  private static final Formula.Of3 MIXED =
      Formula.of("average_balance_a", "s·Bi + (1 − s)·Bc", "A", DEFINITION)
          .with("s", "Bi", "Bc", (s, idle, cruise) -> s * idle + (1 - s) * cruise);
  private static final Formula.Of2 SUM =
      Formula.of("discharge_a", "Io + I", "A", DEFINITION).with("Io", "I", Double::sum);
  private static final Formula.Of2 USABLE =
      Formula.of("usable_share", "d − (1 − c)", "", DEFINITION)
          .with("d", "c", (depth, charge) -> depth - (1 - charge));

  private static final Card<SupplyBudgetRequest, SupplyBudgetResult> CARD =
      Card.of("supply-budget", SupplyBudgetRequest.class, SupplyBudgetResult.class)
          .title("Alternator and battery")
          .purpose(
              "Whether alternator and battery suffice for a sound system: what it draws on average and at"
                  + " peaks, whether the battery charges, how long one may listen with the engine"
                  + " off, how long the vehicle may stand, and what voltage and clean power are"
                  + " left at the amplifier.")
          .example(
              """
              {"alternator": {"idle_a": 60, "cruise_a": 120, "voltage_v": 14.2, "low_v": 12.6},
               "consumers": {"running_a": 45, "engine_off_a": 4, "standby_ma": 30},
               "battery": {"capacity_ah": 70, "reserve_min": 120, "resting_v": 12.4,
                 "internal_ohm": 0.008},
               "system": {"clean_power_w": 1000, "supply_v": 14.4, "supply_regulated": false,
                 "full_efficiency": 0.8, "average_efficiency": 0.7, "idle_a": 2, "level_db": 0,
                 "crest_factor_db": 12, "supply_cable_ohm": 0.004, "minimum_v": 10},
               "depth": 0.3, "idle_share": 0.25, "cranking_v": 8}
              """)
          .sources(
              Discharge.PEUKERT,
              Discharge.RESERVE,
              ConstantPower.KIRCHHOFF,
              ConstantPower.MATCHED_LOAD,
              DEFINITION,
              Source.COMMON_PRACTICE)
          .limits(
              "Average draw is taken as constant power; an unregulated amplifier at its peaks as a"
                  + " resistance, a regulated one as constant power.",
              "The alternator holds its voltage up to its output and then gives that output; the"
                  + " battery does the rest at its resting voltage less its internal resistance."
                  + " Just charged, it holds more for a while.",
              "Peaks are those of a drum beat, a few tenths of a second: not of one half-wave and"
                  + " not with a large capacitor added.",
              "Capacity is that of a new battery at 20 to 27 °C; age and cold take a third or more."
                  + " Resting voltage is one figure for the whole discharge.",
              "Charge balance counts amperes: a battery takes back a few percent more than it"
                  + " gave.")
          .findings(BudgetFinding.values())
          .refusals(BudgetFault.values())
          .cautions(Safety.BATTERY, Safety.FIRE, Safety.AIRBAG)
          .build();

  @Override
  public Card<SupplyBudgetRequest, SupplyBudgetResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.PLAN);
  }

  @Override
  public SupplyBudgetRequest ask(PlanReader plan) {
    return new BudgetOfPlan(plan).request();
  }

  @Override
  public SupplyBudgetResult compute(SupplyBudgetRequest q, Run run) {
    Programme programme = programme(q.system(), run);
    Alternator alternator = q.alternator();
    double exponent = BudgetRules.exponent(q.battery(), run);

    SupplyState cruise =
        running(When.AT_CRUISE, "/alternator/cruise_a", alternator.cruiseA(), q, programme, run);
    SupplyState idle =
        running(When.AT_IDLE, "/alternator/idle_a", alternator.idleA(), q, programme, run);
    SupplyState smartLow =
        alternator.lowV() == null
            ? null
            : new Situation(When.AT_LOW_VOLTAGE, "/alternator/low_v", q, programme, run)
                .running(alternator.cruiseA(), alternator.lowV());
    Situation engineOff = new Situation(When.ENGINE_OFF, "/battery", q, programme, run);
    SupplyState off = engineOff.off();
    engineOff.judge(off, -q.consumers().engineOffA());
    SupplyState cranking =
        q.crankingV() == null
            ? null
            : new Situation(When.STARTING, "/cranking_v", q, programme, run)
                .cranking(q.crankingV());

    Double mixed = mixed(q.idleShare(), idle, cruise, run);
    BudgetRules.contradictions(q, programme, run);
    BudgetRules.find(q, cruise, idle, smartLow, cranking, mixed, run);
    return SupplyBudgetResultBuilder.builder()
        .averageOutputW(programme.averageOutputW())
        .peakOutputW(programme.peakOutputW())
        .averageInputW(programme.averageInputW())
        .peakInputW(programme.peakInputW())
        .cruise(cruise)
        .idle(idle)
        .smartLow(smartLow)
        .engineOff(off)
        .cranking(cranking)
        .averageBalanceA(mixed)
        .listeningMin(listening(q, off, exponent, run))
        .peukertExponent(exponent)
        .standbyDays(BudgetRules.standby(q, run))
        .build();
  }

  private static Programme programme(SoundSystem system, Run run) {
    double idle = system.idleA();
    double at = system.supplyV();
    double peak = run.apply(Programme.PEAK, system.cleanPowerW(), system.levelDb());
    double average = run.apply(Programme.AVERAGE, peak, system.crestFactorDb());
    return new Programme(
        average,
        peak,
        run.apply(Programme.INPUT, average, system.averageEfficiency(), idle, at),
        run.apply(Programme.INPUT, peak, system.fullEfficiency(), idle, at));
  }

  private static SupplyState running(
      When when,
      String pointer,
      double alternatorA,
      SupplyBudgetRequest q,
      Programme programme,
      Run run) {
    Situation situation = new Situation(when, pointer, q, programme, run);
    SupplyState state = situation.running(alternatorA, q.alternator().voltageV());
    situation.judge(state, alternatorA - q.consumers().runningA());
    return state;
  }

  private static Double mixed(Double share, SupplyState idle, SupplyState cruise, Run run) {
    return share == null || idle.balanceA() == null || cruise.balanceA() == null
        ? null
        : (Double) run.apply(MIXED, share, idle.balanceA(), cruise.balanceA());
  }

  private static Double listening(
      SupplyBudgetRequest q, SupplyState off, double exponent, Run run) {
    if (off.averageCurrentA() == null) {
      return null;
    }
    Battery battery = q.battery();
    double current = run.apply(SUM, q.consumers().engineOffA(), off.averageCurrentA());
    if (battery.peukertExponent() == null
        && battery.reserveMin() == null
        && Discharge.fasterThanRated(battery.capacityAh(), current)) {
      run.find(BudgetFinding.PEUKERT_ASSUMED)
          .at("/battery/peukert_exponent")
          .value(current)
          .limit(battery.capacityAh() / 20);
    }
    double hours = run.apply(Discharge.HOURS, battery.capacityAh(), current, exponent);
    return run.apply(Discharge.MINUTES, hours, run.apply(USABLE, q.depth(), battery.charge()));
  }
}
