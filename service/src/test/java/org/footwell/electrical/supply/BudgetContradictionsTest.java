package org.footwell.electrical.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.junit.jupiter.api.Test;

/** Figures that cannot belong together are named, both of them. */
class BudgetContradictionsTest {

  private static Finding finding(Answer<?> answer, String code) {
    return answer.findings().stream()
        .filter(one -> one.code().equals(code))
        .findFirst()
        .orElseThrow(() -> new AssertionError(Answers.codes(answer)));
  }

  @Test
  void anAverageDrawAboveThePeakDrawIsSaid() {
    Budget budget = new Budget();
    budget
        .system
        .cleanPowerW(500.0)
        .fullEfficiency(0.72)
        .averageEfficiency(0.3)
        .crestFactorDb(6.02);
    // 500/0.72 = 694 W at the peaks, 250/0.3 = 833 W on average
    Answer<SupplyBudgetResult> answer = budget.answer();
    assertTrue(answer.result().averageInputW() > answer.result().peakInputW());
    Finding said = finding(answer, "average-above-peak");
    assertEquals(answer.result().averageInputW(), said.value());
    assertEquals(answer.result().peakInputW(), said.limit());
  }

  @Test
  void anAlternatorBelowTheBatteryDoesNotChargeIt() {
    Budget budget = new Budget();
    budget.alternator.voltageV(11.5);
    Answer<SupplyBudgetResult> answer = budget.answer();
    Finding said = finding(answer, "alternator-below-battery");
    assertEquals(11.5, said.value());
    assertEquals(12, said.limit());
    // It gives what drives (12 − 11.5) V through its 0.09 ohm.
    assertEquals(-0.5 / 0.09, answer.result().cruise().balanceA(), 1e-9);
    assertFalse(Answers.codes(answer).contains("discharges-at-cruise"));
  }

  @Test
  void aSmartAlternatorBelowTheBatteryDoesNotChargeItEither() {
    Budget budget = new Budget();
    budget.alternator.lowV(11.8);
    assertEquals(-0.2 / 0.09, budget.result().smartLow().balanceA(), 1e-9);
    assertFalse(Answers.codes(budget.answer()).contains("alternator-below-battery"));
  }

  @Test
  void aStarterThatRaisesTheBatteryIsSaid() {
    Budget budget = new Budget();
    budget.use.crankingV(12.5);
    Finding said = finding(budget.answer(), "cranking-above-rest");
    assertEquals(12.5, said.value());
    assertEquals(12, said.limit());
  }

  @Test
  void anAmplifierThatNeedsMoreThanItIsRatedAtIsSaid() {
    Budget budget = new Budget();
    budget.system.minimumV(14.5);
    Finding said = finding(budget.answer(), "minimum-above-rating");
    assertEquals(14.5, said.value());
    assertEquals(14, said.limit());
  }
}
