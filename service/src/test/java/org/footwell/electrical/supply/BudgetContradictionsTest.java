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
    BudgetDraft draft = new BudgetDraft();
    draft.cleanPowerW = 500;
    draft.fullEfficiency = 0.72;
    draft.averageEfficiency = 0.3;
    draft.crestFactorDb = 6.02;
    // 500/0.72 = 694 W at the peaks, 250/0.3 = 833 W on average
    Answer<SupplyBudgetResult> answer = draft.answer();
    assertTrue(answer.result().averageInputW() > answer.result().peakInputW());
    Finding said = finding(answer, "average-above-peak");
    assertEquals(answer.result().averageInputW(), said.value());
    assertEquals(answer.result().peakInputW(), said.limit());
  }

  @Test
  void anAlternatorBelowTheBatteryDoesNotChargeIt() {
    BudgetDraft draft = new BudgetDraft();
    draft.voltageV = 11.5;
    Answer<SupplyBudgetResult> answer = draft.answer();
    Finding said = finding(answer, "alternator-below-battery");
    assertEquals(11.5, said.value());
    assertEquals(12, said.limit());
    // It gives what drives (12 − 11.5) V through its 0.09 ohm.
    assertEquals(-0.5 / 0.09, answer.result().cruise().balanceA(), 1e-9);
    assertFalse(Answers.codes(answer).contains("discharges-at-cruise"));
  }

  @Test
  void aSmartAlternatorBelowTheBatteryDoesNotChargeItEither() {
    BudgetDraft draft = new BudgetDraft();
    draft.lowV = 11.8;
    assertEquals(-0.2 / 0.09, draft.result().smartLow().balanceA(), 1e-9);
    assertFalse(Answers.codes(draft.answer()).contains("alternator-below-battery"));
  }

  @Test
  void aStarterThatRaisesTheBatteryIsSaid() {
    BudgetDraft draft = new BudgetDraft();
    draft.crankingV = 12.5;
    Finding said = finding(draft.answer(), "cranking-above-rest");
    assertEquals(12.5, said.value());
    assertEquals(12, said.limit());
  }

  @Test
  void anAmplifierThatNeedsMoreThanItIsRatedAtIsSaid() {
    BudgetDraft draft = new BudgetDraft();
    draft.minimumV = 14.5;
    Finding said = finding(draft.answer(), "minimum-above-rating");
    assertEquals(14.5, said.value());
    assertEquals(14, said.limit());
  }
}
