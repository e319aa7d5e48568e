package org.footwell.electrical.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Verdict;
import org.footwell.electrical.supply.SupplyBudgetResult.SupplyState;
import org.junit.jupiter.api.Test;

class SupplyBudgetTest {

  private static Finding finding(Answer<?> answer, String code) {
    return answer.findings().stream()
        .filter(one -> one.code().equals(code))
        .findFirst()
        .orElseThrow();
  }

  private static List<Fault> faults(Budget budget) {
    return Answers.faults(new SupplyBudget(), budget.request());
  }

  /** The example of the method page, an unregulated amplifier of 1000 W. */
  private static Budget thousandWatts() {
    Budget budget = new Budget();
    budget.alternator.voltageV(14.2).lowV(12.6);
    budget.consumers.runningA(45.0).engineOffA(4.0).standbyMa(30.0);
    budget
        .battery
        .capacityAh(70.0)
        .peukertExponent(null)
        .reserveMin(120.0)
        .restingV(12.4)
        .internalOhm(0.008);
    budget
        .system
        .cleanPowerW(1000.0)
        .supplyV(14.4)
        .supplyRegulated(false)
        .fullEfficiency(0.8)
        .averageEfficiency(0.7)
        .idleA(2.0)
        .crestFactorDb(12.0)
        .supplyCableOhm(0.004)
        .minimumV(10.0);
    budget.use.depth(0.3).idleShare(0.25).crankingV(8.0);
    return budget;
  }

  @Test
  void theWorkedExampleOfTheMethodPage() {
    Answer<SupplyBudgetResult> answer = thousandWatts().answer();
    SupplyBudgetResult result = answer.result();
    assertEquals(126.19, result.averageOutputW(), 0.005);
    assertEquals(209.07, result.averageInputW(), 0.005);
    assertEquals(1278.8, result.peakInputW(), 1e-9);
    assertEquals(14.785, result.cruise().averageCurrentA(), 0.0005);
    assertEquals(60.215, result.cruise().balanceA(), 0.0005);
    assertEquals(74.647, result.cruise().peakCurrentA(), 0.0005);
    assertEquals(12.403, result.cruise().peakBatteryV(), 0.0005);
    assertEquals(12.104, result.cruise().peakAmplifierV(), 0.0005);
    assertEquals(706.56, result.cruise().cleanPowerW(), 0.005);
    assertEquals(0.215, result.idle().balanceA(), 0.0005);
    assertEquals(655.35, result.idle().cleanPowerW(), 0.005);
    assertEquals(16.681, result.smartLow().averageCurrentA(), 0.0005);
    assertEquals(17.191, result.engineOff().averageCurrentA(), 0.0005);
    assertEquals(639.53, result.engineOff().cleanPowerW(), 0.005);
    assertEquals(1.1711, result.peukertExponent(), 0.00005);
    assertEquals(43.69, result.listeningMin(), 0.005);
    assertEquals(44.30, result.standbyDays(), 0.005);
    assertEquals(7.894, result.cranking().averageAmplifierV(), 0.0005);
    assertEquals(0.25 * 0.21493524 + 0.75 * 60.21493524, result.averageBalanceA(), 1e-6);
    assertEquals(
        List.of(
            "peaks-from-battery",
            "clean-power-lost",
            "peaks-from-battery",
            "clean-power-lost",
            "peaks-from-battery",
            "clean-power-lost",
            "smart-alternator",
            "cranking-dropout"),
        Answers.codes(answer));
    assertEquals(Verdict.NOTE, answer.verdict());
  }

  @Test
  void constantPowerThroughBatteryAndCableWithTheEngineOff() {
    SupplyState off = new Budget().result().engineOff();
    assertEquals(20, off.averageCurrentA(), 1e-12);
    assertEquals(20, off.peakCurrentA(), 1e-12);
    // 12 V − 20 A · 0.09 ohm, and 0.01 ohm more
    assertEquals(10.2, off.peakBatteryV(), 1e-12);
    assertEquals(10, off.peakAmplifierV(), 1e-12);
    assertEquals(-20, off.balanceA(), 1e-12);
    assertEquals(200, off.cleanPowerW());
  }

  @Test
  void whatTheAlternatorGivesStaysAtItsVoltage() {
    SupplyState cruise = new Budget().result().cruise();
    // (14 − √(196 − 8))/0.02 = 14.4336 A
    assertEquals((14 - Math.sqrt(188)) / 0.02, cruise.averageCurrentA(), 1e-9);
    assertEquals(14, cruise.peakBatteryV());
    assertEquals(120 - 40 - cruise.averageCurrentA(), cruise.balanceA(), 1e-9);
  }

  @Test
  void pastTheAlternatorTheBatteryHelpsAndItsVoltageCounts() {
    Budget budget = new Budget();
    budget.alternator.idleA(45.0);
    budget.consumers.runningA(45.0);
    Answer<SupplyBudgetResult> answer = budget.answer();
    // Nothing to spare at idle: the battery gives all 20 A.
    assertEquals(20, answer.result().idle().averageCurrentA(), 1e-12);
    assertEquals(10.2, answer.result().idle().peakBatteryV(), 1e-12);
    assertEquals(-20, answer.result().idle().balanceA(), 1e-12);
    assertEquals("discharges-at-idle", answer.findings().get(0).code());
    assertEquals(20, answer.findings().get(0).value(), 1e-12);
    Finding helped = finding(answer, "peaks-from-battery");
    assertEquals(0, helped.limit());
    assertEquals("/alternator/idle_a", helped.pointer());
  }

  @Test
  void aBatteryThatRunsFlatWhileDrivingIsAStop() {
    Budget budget = new Budget();
    budget.alternator.idleA(30.0).cruiseA(50.0);
    budget.consumers.runningA(45.0);
    budget.use.idleShare(0.5);
    Answer<SupplyBudgetResult> answer = budget.answer();
    assertEquals(Verdict.STOP, answer.verdict());
    assertEquals(
        List.of("discharges-at-cruise", "discharges-on-average"),
        Answers.codes(answer).subList(0, 2));
    assertEquals(
        (answer.result().idle().balanceA() + answer.result().cruise().balanceA()) / 2,
        answer.result().averageBalanceA(),
        1e-12);
  }

  @Test
  void unregulatedPowerGoesWithTheSquareOfTheVoltage() {
    Budget budget = new Budget();
    budget.system.supplyRegulated(false);
    SupplyState off = budget.result().engineOff();
    // 14²/200 = 0.98 ohm like a resistance: 12/(0.1 + 0.98) A
    assertEquals(12 / 1.08, off.peakCurrentA(), 1e-12);
    assertEquals(12 * 0.98 / 1.08, off.peakAmplifierV(), 1e-12);
    assertEquals(200 * Math.pow(12 * 0.98 / 1.08 / 14, 2), off.cleanPowerW(), 1e-9);
    assertTrue(Answers.codes(budget.answer()).contains("clean-power-lost"));
  }

  @Test
  void programmeLevelAndCrestFactorSetAverageAndPeak() {
    Budget budget = new Budget();
    budget
        .system
        .levelDb(-10.0)
        .crestFactorDb(20 * Math.log10(Math.sqrt(2)) + 10)
        .fullEfficiency(0.8)
        .averageEfficiency(0.5)
        .idleA(1.0);
    SupplyBudgetResult result = budget.result();
    assertEquals(20, result.peakOutputW(), 1e-12);
    assertEquals(2, result.averageOutputW(), 1e-12);
    assertEquals(2 / 0.5 + 14, result.averageInputW(), 1e-12);
    assertEquals(20 / 0.8 + 14, result.peakInputW(), 1e-12);
  }

  @Test
  void peukertShortensListening() {
    Budget budget = new Budget();
    // 20 h · (5 A/20 A)^1.2 = 3.7893 h, half of it
    assertEquals(113.68, budget.result().listeningMin(), 0.005);
    budget.battery.peukertExponent(null);
    // 100 Ah/20 A = 5 h
    assertEquals(150, budget.result().listeningMin(), 1e-9);
    assertTrue(Answers.codes(budget.answer()).contains("peukert-assumed"));
  }

  @Test
  void belowTheTwentyHourRateNoMoreThanTheCapacityIsCountedOn() {
    Budget budget = new Budget();
    budget.battery.capacityAh(1000.0);
    // 1000 Ah/20 A = 50 h, half of it
    assertEquals(1500, budget.result().listeningMin(), 1e-9);
    budget.battery.peukertExponent(null);
    assertFalse(Answers.codes(budget.answer()).contains("peukert-assumed"));
  }

  @Test
  void aBatteryNotFullIsSoonerAtTheDepth() {
    Budget budget = new Budget();
    budget.battery.peukertExponent(null).charge(0.8);
    // 0.5 − 0.2 of 5 h
    assertEquals(90, budget.result().listeningMin(), 1e-9);
  }

  @Test
  void standbyAndSelfDischargeDrainTheParkedVehicle() {
    Budget budget = new Budget();
    budget.battery.capacityAh(72.0);
    // 0.047 A + 72 Ah · 0.03/720 h = 0.05 A; 36 Ah
    assertEquals(30, budget.result().standbyDays(), 1e-9);
    budget.consumers.standbyMa(147.0);
    Answer<SupplyBudgetResult> answer = budget.answer();
    assertEquals(10, answer.result().standbyDays(), 1e-9);
    assertEquals(14, finding(answer, "standby-too-short").limit());
    budget.consumers.standbyMa(0.0);
    budget.battery.selfDischarge(0.0);
    assertNull(budget.result().standbyDays());
  }

  @Test
  void aPowerThatCannotBeBroughtThroughIsAStopWithTheReason() {
    Budget budget = new Budget();
    budget.system.cleanPowerW(400.0);
    // 12²/(4 · 0.1) = 360 W
    Answer<SupplyBudgetResult> answer = budget.answer();
    Finding collapse = finding(answer, "supply-collapses");
    assertEquals(360, collapse.limit(), 1e-12);
    assertEquals(400, collapse.value(), 1e-12);
    assertEquals(
        "The supply with the engine off cannot give the 400 W wanted: through battery"
            + " and cable at most 360 W get through, the square of the voltage over four"
            + " times the resistance.",
        collapse.text());
    assertNull(answer.result().engineOff().averageCurrentA());
    assertNull(answer.result().listeningMin());
    assertNotNull(answer.result().cruise().averageCurrentA());
  }

  @Test
  void atExactlyTheLargestPowerTheSupplyStillHolds() {
    Budget budget = new Budget();
    budget.system.cleanPowerW(359.999);
    assertEquals(60, budget.result().engineOff().averageCurrentA(), 0.2);
  }

  @Test
  void belowItsMinimumTheAmplifierIsOff() {
    Budget budget = new Budget();
    budget.system.minimumV(10.5);
    Answer<SupplyBudgetResult> answer = budget.answer();
    assertEquals(0, answer.result().engineOff().cleanPowerW());
    assertEquals("amplifier-starved", answer.findings().get(0).code());
    assertEquals(Verdict.WARNING, answer.verdict());
  }

  @Test
  void aCrankingDipSwitchesTheAmplifierOff() {
    Budget budget = new Budget();
    budget.system.supplyCableOhm(0.02);
    budget.use.crankingV(9.0);
    budget.system.minimumV(8.8);
    // (9 − √(81 − 16))/0.04 = 23.44 A: 8.531 V
    SupplyState cranking = budget.result().cranking();
    assertEquals((9 + Math.sqrt(65)) / 2, cranking.averageAmplifierV(), 1e-9);
    assertNull(cranking.balanceA());
    assertEquals(
        "While the engine is started the battery falls to 9 V and the amplifier sees 8.531 V where"
            + " it needs 8.8 V: it drops out for that moment. Harmless if it mutes without a thump.",
        finding(budget.answer(), "cranking-dropout").inFull());
    budget.use.crankingV(9.0);
    budget.system.minimumV(8.5);
    assertFalse(Answers.codes(budget.answer()).contains("cranking-dropout"));
    budget.use.crankingV(3.0);
    budget.system.minimumV(2.0);
    // 3²/(4 · 0.02) = 112.5 W
    assertNull(budget.result().cranking().averageAmplifierV());
    assertTrue(
        finding(budget.answer(), "cranking-dropout").inFull().contains("cannot draw its power"));
  }

  @Test
  void aSmartAlternatorFeedsTheAmplifierAtItsLowVoltage() {
    Budget budget = new Budget();
    budget.system.supplyRegulated(false);
    budget.alternator.lowV(12.5);
    Answer<SupplyBudgetResult> answer = budget.answer();
    SupplyState low = answer.result().smartLow();
    assertEquals(12.5 * 0.98 / 0.99, low.peakAmplifierV(), 1e-12);
    assertTrue(low.cleanPowerW() < answer.result().cruise().cleanPowerW());
    Finding finding = finding(answer, "smart-alternator");
    assertTrue(finding.inFull().contains("sees 12.37 V at the peaks and gives 156.2 W clean"));
  }

  @Test
  void listeningMustLeaveEnoughToStart() {
    Budget budget = new Budget();
    budget.use.depth(0.6);
    assertEquals(List.of("no-start-left", "deep-discharge"), Answers.codes(budget.answer()));
    budget.battery.charge(0.5);
    assertEquals(
        List.of("charge-too-low-to-start", "deep-discharge"), Answers.codes(budget.answer()));
    assertEquals(0, budget.result().standbyDays());
  }

  @Test
  void aReserveBeyondTheCapacityCountsAsNoPeukertLoss() {
    Budget budget = new Budget();
    budget.battery.peukertExponent(null).reserveMin(245.0);
    assertEquals(1, budget.result().peukertExponent());
    assertTrue(Answers.codes(budget.answer()).contains("reserve-above-capacity"));
  }

  @Test
  void impossibleInputsAreRefusedTogether() {
    Budget budget = new Budget();
    budget.battery.reserveMin(100.0);
    budget.alternator.lowV(14.0).cruiseA(50.0);
    assertEquals(
        List.of(
            "not-ascending /alternator/voltage_v",
            "not-ascending /alternator/cruise_a",
            "at-most-one-of /battery/reserve_min"),
        faults(budget).stream().map(fault -> fault.code() + " " + fault.pointer()).toList());
    budget.battery.reserveMin(null);
    budget.alternator.lowV(null).cruiseA(60.0);
    budget.use.depth(50.0);
    budget.battery.restingV(24.0);
    List<Fault> faults = faults(budget);
    assertEquals(
        List.of("depth-beyond-capacity", "voltages-do-not-match"),
        faults.stream().map(Fault::code).toList());
    assertEquals("/depth", faults.get(0).pointer());
    assertEquals(
        "A depth of 50.0 is more than the battery holds: the depth is a share of the capacity, at"
            + " most 1. For percent divide by 100.",
        faults.get(0).detail());
  }

  @Test
  void aDepthAlreadyReachedIsRefused() {
    Budget budget = new Budget();
    budget.battery.charge(0.5);
    assertEquals("depth-already-reached", faults(budget).get(0).code());
  }

  @Test
  void aReserveThatCannotBelongToTheCapacityIsRefused() {
    Budget budget = new Budget();
    budget.battery.peukertExponent(null).reserveMin(500.0);
    assertEquals("reserve-impossible", faults(budget).get(0).code());
    budget.battery.capacityAh(600.0);
    assertEquals("/battery/reserve_min", faults(budget).get(0).pointer());
  }

  @Test
  void aLoopWithoutResistanceIsRefused() {
    Budget budget = new Budget();
    budget.system.supplyCableOhm(0.0);
    budget.battery.internalOhm(0.0);
    assertEquals(
        List.of("/battery/internal_ohm", "/system/supply_cable_ohm"),
        faults(budget).stream().map(Fault::pointer).sorted().toList());
  }
}
