package org.footwell.electrical.supply;

import static org.footwell.calculation.Source.DEFINITION;
import static org.footwell.electrical.supply.BudgetFinding.AMPLIFIER_STARVED;
import static org.footwell.electrical.supply.BudgetFinding.CLEAN_POWER_LOST;
import static org.footwell.electrical.supply.BudgetFinding.PEAKS_FROM_BATTERY;
import static org.footwell.electrical.supply.BudgetFinding.SUPPLY_COLLAPSES;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.electrical.supply.SupplyBudgetRequest.SoundSystem;
import org.footwell.electrical.supply.SupplyBudgetResult.SupplyState;
import org.footwell.parts.Battery;
import org.footwell.physics.ConstantPower;
import org.footwell.physics.Decibels;

/**
 * Works out what the supply does in one situation.
 *
 * @param when what a fitter calls it
 * @param pointer the field of the request that makes it
 */
record Situation(When when, String pointer, SupplyBudgetRequest q, Programme programme, Run run) {

  /** Common practice, no source: less than this is not worth a word. */
  private static final double LOSS_WORTH_SAYING_DB = 1;

  private static final Formula.Of3 UNREGULATED =
      Formula.of("clean_power_w", "P·(U/Us)²", "W", ConstantPower.KIRCHHOFF)
          .with("P", "U", "Us", (p, u, us) -> p * (u / us) * (u / us));
  private static final Formula.Of3 BALANCE =
      Formula.of("balance_a", "Ia − Io − I", "A", DEFINITION)
          .with("Ia", "Io", "I", (alternator, others, i) -> alternator - others - i);

  /** Current in A that U volts leave to a battery that rests at Ur behind Ri ohms. */
  private static final Formula.Of3 FROM_BATTERY =
      Formula.of("battery_gives_a", "(Ur − U)/Ri", "A", ConstantPower.KIRCHHOFF)
          .with("Ur", "U", "Ri", (rest, u, ri) -> (rest - u) / ri);

  /** With an alternator that gives so many amperes at a voltage it holds while it can. */
  SupplyState running(double alternatorA, double voltage) {
    double others = q.consumers().runningA();
    double left = alternatorA - others;
    Feed held = Feed.held(voltage, q.system().supplyCableOhm());
    Double average = held.constantPower(programme.averageInputW(), run);
    Feed averageFeed = held;
    if (average == null || average > left) {
      averageFeed = helped(left);
      average = averageFeed.constantPower(programme.averageInputW(), run);
    }
    Double peak = peak(held);
    Feed peakFeed = held;
    if (peak == null || peak > left) {
      peakFeed = helped(left);
      Double wanted = peak;
      peak = peak(peakFeed);
      if (peak != null && wanted != null) {
        run.find(PEAKS_FROM_BATTERY)
            .at(pointer)
            .value(wanted)
            .limit(Math.max(0, left))
            .with("situation", when)
            .with("voltage", peakFeed.atBattery(peak, run));
      }
    }
    Double balance = average == null ? null : balance(alternatorA, voltage, average);
    return state(averageFeed, average, peakFeed, peak, balance);
  }

  /** An alternator that holds less than the battery's resting voltage leaves all it can to it. */
  private double balance(double alternatorA, double voltage, double average) {
    double others = q.consumers().runningA();
    double left = run.apply(BALANCE, alternatorA, others, average);
    Battery battery = q.battery();
    if (voltage >= battery.restingV()) {
      return left;
    }
    double given = run.apply(FROM_BATTERY, battery.restingV(), voltage, battery.internalOhm());
    return Math.min(left, -Math.min(others + average, given));
  }

  /** On the battery alone. */
  SupplyState off() {
    double others = q.consumers().engineOffA();
    Feed feed = battery(others);
    Double average = feed.constantPower(programme.averageInputW(), run);
    Double peak = peak(feed);
    return state(
        feed, average, feed, peak, average == null ? null : run.apply(BALANCE, 0, others, average));
  }

  /** With the battery held down to a voltage by the starter. */
  SupplyState cranking(double voltage) {
    Feed feed = Feed.held(voltage, q.system().supplyCableOhm());
    Double average = feed.constantPower(programme.averageInputW(), run);
    Double peak = peak(feed);
    return state(feed, average, feed, peak, null);
  }

  /** The alternator gives all it can; the battery gives, or takes, the difference. */
  private Feed helped(double left) {
    return battery(-left);
  }

  private Feed battery(double elsewhereA) {
    return Feed.battery(q.battery(), elsewhereA, q.system().supplyCableOhm(), run);
  }

  /** Current in A at the peaks, or null when the power cannot be brought through. */
  private Double peak(Feed feed) {
    double watts = programme.peakInputW();
    return q.system().supplyRegulated()
        ? feed.constantPower(watts, run)
        : feed.likeResistance(watts, q.system().supplyV(), run);
  }

  private SupplyState state(
      Feed averageFeed, Double average, Feed peakFeed, Double peak, Double balance) {
    return new SupplyState(
        average,
        peak,
        peak == null ? null : peakFeed.atBattery(peak, run),
        average == null ? null : averageFeed.atAmplifier(average, run),
        peak == null ? null : peakFeed.atAmplifier(peak, run),
        peak == null ? null : cleanPower(peakFeed.atAmplifier(peak, run)),
        balance);
  }

  private double cleanPower(double voltage) {
    SoundSystem system = q.system();
    if (system.minimumV() != null && voltage < system.minimumV()) {
      return 0;
    }
    return system.supplyRegulated()
        ? system.cleanPowerW()
        : run.apply(UNREGULATED, system.cleanPowerW(), voltage, system.supplyV());
  }

  /** Says what listening is like, with so many amperes left by the other consumers. */
  void judge(SupplyState state, double left) {
    SoundSystem system = q.system();
    if (state.averageCurrentA() == null || state.peakCurrentA() == null) {
      double wanted =
          state.averageCurrentA() == null ? programme.averageInputW() : programme.peakInputW();
      run.find(SUPPLY_COLLAPSES)
          .at(pointer)
          .value(wanted)
          .limit(helped(left).largest())
          .with("situation", when);
      return;
    }
    if (state.cleanPowerW() == 0) {
      run.find(AMPLIFIER_STARVED)
          .at(pointer)
          .value(state.peakAmplifierV())
          .limit(system.minimumV())
          .with("situation", when);
      return;
    }
    double lost = -Decibels.ofPower(state.cleanPowerW() / system.cleanPowerW());
    if (lost > LOSS_WORTH_SAYING_DB) {
      run.find(CLEAN_POWER_LOST)
          .at(pointer)
          .value(state.cleanPowerW())
          .limit(system.cleanPowerW())
          .with("loss", lost)
          .with("voltage", state.peakAmplifierV())
          .with("situation", when);
    }
  }
}
