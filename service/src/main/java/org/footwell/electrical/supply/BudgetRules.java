package org.footwell.electrical.supply;

import static org.footwell.electrical.supply.BudgetFinding.ALTERNATOR_BELOW_BATTERY;
import static org.footwell.electrical.supply.BudgetFinding.AVERAGE_ABOVE_PEAK;
import static org.footwell.electrical.supply.BudgetFinding.CHARGE_TOO_LOW_TO_START;
import static org.footwell.electrical.supply.BudgetFinding.CRANKING_ABOVE_REST;
import static org.footwell.electrical.supply.BudgetFinding.CRANKING_DROPOUT;
import static org.footwell.electrical.supply.BudgetFinding.DEEP_DISCHARGE;
import static org.footwell.electrical.supply.BudgetFinding.DISCHARGES_AT_CRUISE;
import static org.footwell.electrical.supply.BudgetFinding.DISCHARGES_AT_IDLE;
import static org.footwell.electrical.supply.BudgetFinding.DISCHARGES_ON_AVERAGE;
import static org.footwell.electrical.supply.BudgetFinding.MINIMUM_ABOVE_RATING;
import static org.footwell.electrical.supply.BudgetFinding.NO_START_LEFT;
import static org.footwell.electrical.supply.BudgetFinding.RESERVE_ABOVE_CAPACITY;
import static org.footwell.electrical.supply.BudgetFinding.SMART_ALTERNATOR;
import static org.footwell.electrical.supply.BudgetFinding.STANDBY_TOO_SHORT;

import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.electrical.supply.SupplyBudgetResult.SupplyState;
import org.footwell.parts.Battery;

/** What a fitter says about the figures of a budget. */
final class BudgetRules {

  // Common practice, no source: both limits.
  private static final double STANDBY_DAYS = 14;
  private static final double DEEP = 0.5;

  /** What is lost in the last digits is no contradiction. */
  private static final double ROUNDING = 1e-9;

  private BudgetRules() {}

  static void find(
      SupplyBudgetRequest q,
      SupplyState cruise,
      SupplyState idle,
      SupplyState smartLow,
      SupplyState cranking,
      Double mixed,
      Run run) {
    if (q.alternator().voltageV() < q.battery().restingV()) {
      run.find(ALTERNATOR_BELOW_BATTERY)
          .at("/alternator/voltage_v")
          .value(q.alternator().voltageV())
          .limit(q.battery().restingV());
    } else {
      discharge(q, cruise, idle, mixed, run);
    }
    if (smartLow != null) {
      smart(q, smartLow, run);
    }
    if (cranking != null) {
      cranking(q, cranking, run);
    }
    depth(q, run);
  }

  /** Figures that cannot belong together, which calculations would go on with in silence. */
  static void contradictions(SupplyBudgetRequest q, Programme programme, Run run) {
    if (programme.averageInputW() > programme.peakInputW() * (1 + ROUNDING)) {
      run.find(AVERAGE_ABOVE_PEAK)
          .at("/system/average_efficiency")
          .value(programme.averageInputW())
          .limit(programme.peakInputW());
    }
    Double minimum = q.system().minimumV();
    if (minimum != null && minimum > q.system().supplyV()) {
      run.find(MINIMUM_ABOVE_RATING)
          .at("/system/minimum_v")
          .value(minimum)
          .limit(q.system().supplyV());
    }
    if (q.crankingV() != null && q.crankingV() > q.battery().restingV()) {
      run.find(CRANKING_ABOVE_REST)
          .at("/cranking_v")
          .value(q.crankingV())
          .limit(q.battery().restingV());
    }
  }

  private static void discharge(
      SupplyBudgetRequest q, SupplyState cruise, SupplyState idle, Double mixed, Run run) {
    if (cruise.balanceA() != null && cruise.balanceA() < 0) {
      run.find(DISCHARGES_AT_CRUISE)
          .at("/alternator/cruise_a")
          .value(-cruise.balanceA())
          .limit(q.alternator().cruiseA());
    }
    if (idle.balanceA() != null && idle.balanceA() < 0) {
      run.find(DISCHARGES_AT_IDLE)
          .at("/alternator/idle_a")
          .value(-idle.balanceA())
          .limit(q.alternator().idleA());
    }
    if (mixed != null && mixed < 0) {
      run.find(DISCHARGES_ON_AVERAGE).at("/idle_share").value(-mixed).limit(0);
    }
  }

  private static void smart(SupplyBudgetRequest q, SupplyState state, Run run) {
    Phrase amplifier =
        state.peakAmplifierV() == null
            ? Phrase.of(SupplyWords.CANNOT_DRAW)
            : Phrase.of(SupplyWords.SEES_AND_GIVES)
                .with("voltage", state.peakAmplifierV())
                .with("power", state.cleanPowerW());
    run.find(SMART_ALTERNATOR)
        .at("/alternator/low_v")
        .value(q.alternator().lowV())
        .limit(q.alternator().voltageV())
        .with("amplifier", amplifier);
  }

  private static void cranking(SupplyBudgetRequest q, SupplyState state, Run run) {
    Double minimum = q.system().minimumV();
    Double voltage = state.averageAmplifierV();
    if (voltage == null) {
      run.find(CRANKING_DROPOUT)
          .at("/cranking_v")
          .value(q.crankingV())
          .with("amplifier", SupplyWords.CANNOT_DRAW);
    } else if (minimum != null && voltage < minimum) {
      run.find(CRANKING_DROPOUT)
          .at("/cranking_v")
          .value(q.crankingV())
          .limit(minimum)
          .with(
              "amplifier",
              Phrase.of(SupplyWords.SEES_BUT_NEEDS)
                  .with("voltage", voltage)
                  .with("needed", minimum));
    }
  }

  private static void depth(SupplyBudgetRequest q, Run run) {
    Battery battery = q.battery();
    if (battery.charge() <= battery.startCharge()) {
      run.find(CHARGE_TOO_LOW_TO_START)
          .at("/battery/charge")
          .value(100 * battery.charge())
          .limit(100 * battery.startCharge());
    } else if (1 - q.depth() < battery.startCharge()) {
      run.find(NO_START_LEFT)
          .at("/depth")
          .value(100 * (1 - q.depth()))
          .limit(100 * battery.startCharge());
    }
    if (q.depth() > DEEP) {
      run.find(DEEP_DISCHARGE).at("/depth").value(100 * q.depth()).limit(100 * DEEP);
    }
  }

  /** Days parked until the engine no longer starts, judged. */
  static Double standby(SupplyBudgetRequest q, Run run) {
    Battery battery = q.battery();
    double spare = Math.max(0, battery.charge() - battery.startCharge());
    Double days =
        Discharge.standbyDays(
            battery.capacityAh(),
            spare,
            battery.selfDischarge(),
            q.consumers().standbyMa() / 1000,
            run);
    if (days != null && days > 0 && days < STANDBY_DAYS) {
      run.find(STANDBY_TOO_SHORT).at("/consumers/standby_ma").value(days).limit(STANDBY_DAYS);
    }
    return days;
  }

  /** Peukert's exponent given, from the reserve, or 1. */
  static double exponent(Battery battery, Run run) {
    if (battery.peukertExponent() != null) {
      return battery.peukertExponent();
    }
    if (battery.reserveMin() == null) {
      return 1;
    }
    double exponent = Discharge.exponent(battery.capacityAh(), battery.reserveMin(), run);
    if (exponent < 1) {
      run.find(RESERVE_ABOVE_CAPACITY).at("/battery/reserve_min").value(exponent).limit(1);
    }
    return Math.max(1, exponent);
  }
}
