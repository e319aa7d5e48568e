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

  private static List<Fault> faults(BudgetDraft draft) {
    return Answers.faults(new SupplyBudget(), draft.request());
  }

  /** The example of the method page, an unregulated amplifier of 1000 W. */
  private static BudgetDraft thousandWatts() {
    BudgetDraft draft = new BudgetDraft();
    draft.voltageV = 14.2;
    draft.lowV = 12.6;
    draft.runningA = 45;
    draft.engineOffA = 4;
    draft.standbyMa = 30;
    draft.capacityAh = 70;
    draft.peukertExponent = null;
    draft.reserveMin = 120.0;
    draft.restingV = 12.4;
    draft.internalOhm = 0.008;
    draft.cleanPowerW = 1000;
    draft.atV = 14.4;
    draft.regulated = false;
    draft.fullEfficiency = 0.8;
    draft.averageEfficiency = 0.7;
    draft.idleA = 2.0;
    draft.crestFactorDb = 12;
    draft.cableOhm = 0.004;
    draft.minimumV = 10.0;
    draft.depth = 0.3;
    draft.idleShare = 0.25;
    draft.crankingV = 8.0;
    return draft;
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
    SupplyState off = new BudgetDraft().result().engineOff();
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
    SupplyState cruise = new BudgetDraft().result().cruise();
    // (14 − √(196 − 8))/0.02 = 14.4336 A
    assertEquals((14 - Math.sqrt(188)) / 0.02, cruise.averageCurrentA(), 1e-9);
    assertEquals(14, cruise.peakBatteryV());
    assertEquals(120 - 40 - cruise.averageCurrentA(), cruise.balanceA(), 1e-9);
  }

  @Test
  void pastTheAlternatorTheBatteryHelpsAndItsVoltageCounts() {
    BudgetDraft draft = new BudgetDraft();
    draft.alternatorIdleA = 45;
    draft.runningA = 45;
    Answer<SupplyBudgetResult> answer = draft.answer();
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
    BudgetDraft draft = new BudgetDraft();
    draft.alternatorIdleA = 30;
    draft.cruiseA = 50;
    draft.runningA = 45;
    draft.idleShare = 0.5;
    Answer<SupplyBudgetResult> answer = draft.answer();
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
    BudgetDraft draft = new BudgetDraft();
    draft.regulated = false;
    SupplyState off = draft.result().engineOff();
    // 14²/200 = 0.98 ohm like a resistance: 12/(0.1 + 0.98) A
    assertEquals(12 / 1.08, off.peakCurrentA(), 1e-12);
    assertEquals(12 * 0.98 / 1.08, off.peakAmplifierV(), 1e-12);
    assertEquals(200 * Math.pow(12 * 0.98 / 1.08 / 14, 2), off.cleanPowerW(), 1e-9);
    assertTrue(Answers.codes(draft.answer()).contains("clean-power-lost"));
  }

  @Test
  void programmeLevelAndCrestFactorSetAverageAndPeak() {
    BudgetDraft draft = new BudgetDraft();
    draft.levelDb = -10;
    draft.crestFactorDb = 20 * Math.log10(Math.sqrt(2)) + 10;
    draft.fullEfficiency = 0.8;
    draft.averageEfficiency = 0.5;
    draft.idleA = 1.0;
    SupplyBudgetResult result = draft.result();
    assertEquals(20, result.peakOutputW(), 1e-12);
    assertEquals(2, result.averageOutputW(), 1e-12);
    assertEquals(2 / 0.5 + 14, result.averageInputW(), 1e-12);
    assertEquals(20 / 0.8 + 14, result.peakInputW(), 1e-12);
  }

  @Test
  void peukertShortensListening() {
    BudgetDraft draft = new BudgetDraft();
    // 20 h · (5 A/20 A)^1.2 = 3.7893 h, half of it
    assertEquals(113.68, draft.result().listeningMin(), 0.005);
    draft.peukertExponent = null;
    // 100 Ah/20 A = 5 h
    assertEquals(150, draft.result().listeningMin(), 1e-9);
    assertTrue(Answers.codes(draft.answer()).contains("peukert-assumed"));
  }

  @Test
  void belowTheTwentyHourRateNoMoreThanTheCapacityIsCountedOn() {
    BudgetDraft draft = new BudgetDraft();
    draft.capacityAh = 1000;
    // 1000 Ah/20 A = 50 h, half of it
    assertEquals(1500, draft.result().listeningMin(), 1e-9);
    draft.peukertExponent = null;
    assertFalse(Answers.codes(draft.answer()).contains("peukert-assumed"));
  }

  @Test
  void aBatteryNotFullIsSoonerAtTheDepth() {
    BudgetDraft draft = new BudgetDraft();
    draft.peukertExponent = null;
    draft.charge = 0.8;
    // 0.5 − 0.2 of 5 h
    assertEquals(90, draft.result().listeningMin(), 1e-9);
  }

  @Test
  void standbyAndSelfDischargeDrainTheParkedVehicle() {
    BudgetDraft draft = new BudgetDraft();
    draft.capacityAh = 72;
    // 0.047 A + 72 Ah · 0.03/720 h = 0.05 A; 36 Ah
    assertEquals(30, draft.result().standbyDays(), 1e-9);
    draft.standbyMa = 147;
    Answer<SupplyBudgetResult> answer = draft.answer();
    assertEquals(10, answer.result().standbyDays(), 1e-9);
    assertEquals(14, finding(answer, "standby-too-short").limit());
    draft.standbyMa = 0;
    draft.selfDischarge = 0.0;
    assertNull(draft.result().standbyDays());
  }

  @Test
  void aPowerThatCannotBeBroughtThroughIsAStopWithTheReason() {
    BudgetDraft draft = new BudgetDraft();
    draft.cleanPowerW = 400;
    // 12²/(4 · 0.1) = 360 W
    Answer<SupplyBudgetResult> answer = draft.answer();
    Finding collapse = finding(answer, "supply-collapses");
    assertEquals(360, collapse.limit(), 1e-12);
    assertEquals(400, collapse.value(), 1e-12);
    assertEquals(
        "The supply with the engine off cannot give the 400 W wanted: through battery and cable at"
            + " most 360 W get through, the square of the voltage over four times the resistance."
            + " Play quieter, or lower the resistance.",
        collapse.text());
    assertNull(answer.result().engineOff().averageCurrentA());
    assertNull(answer.result().listeningMin());
    assertNotNull(answer.result().cruise().averageCurrentA());
  }

  @Test
  void atExactlyTheLargestPowerTheSupplyStillHolds() {
    BudgetDraft draft = new BudgetDraft();
    draft.cleanPowerW = 359.999;
    assertEquals(60, draft.result().engineOff().averageCurrentA(), 0.2);
  }

  @Test
  void belowItsMinimumTheAmplifierIsOff() {
    BudgetDraft draft = new BudgetDraft();
    draft.minimumV = 10.5;
    Answer<SupplyBudgetResult> answer = draft.answer();
    assertEquals(0, answer.result().engineOff().cleanPowerW());
    assertEquals("amplifier-starved", answer.findings().get(0).code());
    assertEquals(Verdict.WARNING, answer.verdict());
  }

  @Test
  void aCrankingDipSwitchesTheAmplifierOff() {
    BudgetDraft draft = new BudgetDraft();
    draft.cableOhm = 0.02;
    draft.cranking(9, 8.8);
    // (9 − √(81 − 16))/0.04 = 23.44 A: 8.531 V
    SupplyState cranking = draft.result().cranking();
    assertEquals((9 + Math.sqrt(65)) / 2, cranking.averageAmplifierV(), 1e-9);
    assertNull(cranking.balanceA());
    assertEquals(
        "While the engine is started the battery falls to 9 V and the amplifier sees 8.531 V where"
            + " it needs 8.8 V: it drops out for that moment. Harmless if it mutes without a thump.",
        finding(draft.answer(), "cranking-dropout").text());
    draft.cranking(9, 8.5);
    assertFalse(Answers.codes(draft.answer()).contains("cranking-dropout"));
    draft.cranking(3, 2);
    // 3²/(4 · 0.02) = 112.5 W
    assertNull(draft.result().cranking().averageAmplifierV());
    assertTrue(
        finding(draft.answer(), "cranking-dropout").text().contains("cannot draw its power"));
  }

  @Test
  void aSmartAlternatorFeedsTheAmplifierAtItsLowVoltage() {
    BudgetDraft draft = new BudgetDraft();
    draft.regulated = false;
    draft.lowV = 12.5;
    Answer<SupplyBudgetResult> answer = draft.answer();
    SupplyState low = answer.result().smartLow();
    assertEquals(12.5 * 0.98 / 0.99, low.peakAmplifierV(), 1e-12);
    assertTrue(low.cleanPowerW() < answer.result().cruise().cleanPowerW());
    Finding finding = finding(answer, "smart-alternator");
    assertTrue(finding.text().contains("sees 12.37 V at the peaks and gives 156.2 W clean"));
  }

  @Test
  void listeningMustLeaveEnoughToStart() {
    BudgetDraft draft = new BudgetDraft();
    draft.depth = 0.6;
    assertEquals(List.of("no-start-left", "deep-discharge"), Answers.codes(draft.answer()));
    draft.charge = 0.5;
    assertEquals(
        List.of("charge-too-low-to-start", "deep-discharge"), Answers.codes(draft.answer()));
    assertEquals(0, draft.result().standbyDays());
  }

  @Test
  void aReserveBeyondTheCapacityCountsAsNoPeukertLoss() {
    BudgetDraft draft = new BudgetDraft();
    draft.peukertExponent = null;
    draft.reserveMin = 245.0;
    assertEquals(1, draft.result().peukertExponent());
    assertTrue(Answers.codes(draft.answer()).contains("reserve-above-capacity"));
  }

  @Test
  void impossibleInputsAreRefusedTogether() {
    BudgetDraft draft = new BudgetDraft();
    draft.depth = 50;
    draft.reserveMin = 100.0;
    draft.lowV = 14.0;
    draft.cruiseA = 50;
    draft.restingV = 24;
    List<Fault> faults = faults(draft);
    assertEquals(
        List.of(
            "depth-beyond-capacity",
            "peukert-given-twice",
            "low-voltage-not-lower",
            "output-falls-with-speed",
            "voltages-do-not-match"),
        faults.stream().map(Fault::code).toList());
    assertEquals("/depth", faults.get(0).pointer());
    assertEquals(
        "A depth of 50.0 is more than the battery holds: the depth is a share of the capacity, at"
            + " most 1. For percent divide by 100.",
        faults.get(0).detail());
  }

  @Test
  void aDepthAlreadyReachedIsRefused() {
    BudgetDraft draft = new BudgetDraft();
    draft.charge = 0.5;
    assertEquals("depth-already-reached", faults(draft).get(0).code());
  }

  @Test
  void aReserveThatCannotBelongToTheCapacityIsRefused() {
    BudgetDraft draft = new BudgetDraft();
    draft.peukertExponent = null;
    draft.reserveMin = 500.0;
    assertEquals("reserve-impossible", faults(draft).get(0).code());
    draft.capacityAh = 600;
    assertEquals("/battery/reserve_min", faults(draft).get(0).pointer());
  }

  @Test
  void aLoopWithoutResistanceIsRefused() {
    BudgetDraft draft = new BudgetDraft();
    draft.cableOhm = 0;
    draft.internalOhm = 0;
    assertEquals(
        List.of("/battery/internal_ohm", "/system/cable_ohm"),
        faults(draft).stream().map(Fault::pointer).sorted().toList());
  }
}
