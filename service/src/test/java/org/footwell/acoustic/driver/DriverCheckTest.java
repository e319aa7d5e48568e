package org.footwell.acoustic.driver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.driver.DriverCheckRequest.XmaxBasis;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Verdict;
import org.footwell.parts.Sensitivity.Basis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DriverCheckTest {

  private static SheetDraft full() {
    return SheetDraft.woofer().sensitivity(92, Basis.TWO_POINT_EIGHT_THREE_VOLT);
  }

  private static Finding finding(Answer<?> answer, String code) {
    return answer.findings().stream()
        .filter(finding -> finding.code().equals(code))
        .findFirst()
        .orElseThrow(() -> new AssertionError(answer.findings()));
  }

  private static boolean has(Answer<?> answer, String code) {
    return Answers.codes(answer).contains(code);
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    DriverCheckResult result = full().with("xmax_mm", 9).result();
    assertEquals(0.20, result.discrepancy().qtsPercent(), 0.02);
    assertEquals(-0.52, result.discrepancy().fsPercent(), 0.02);
    assertEquals(-0.11, result.discrepancy().vasPercent(), 0.02);
    assertEquals(0.42, result.discrepancy().qesPercent(), 0.02);
    assertEquals(0.00413, result.referenceEfficiency(), 5e-6);
    assertEquals(88.32, result.referenceLevelDbSpl(), 5e-3);
    assertEquals(89.03, result.oneWattLevelDbSpl(), 5e-3);
    assertEquals(92.04, result.twoPointEightThreeVoltLevelDbSpl(), 5e-3);
    assertEquals(205.0, result.effectiveDiameterMm(), 0.05);
    assertEquals(297, result.displacementCm3(), 1e-9);
    assertEquals(67.86, result.efficiencyBandwidthHz(), 5e-3);
    assertEquals(0.85, result.reRatio(), 1e-12);
  }

  @Test
  void aRecordThatAgreesIsOkAndNothingStandsOut() {
    Answer<DriverCheckResult> answer = full().answer();
    assertEquals(Verdict.OK, answer.verdict());
    assertEquals(6, answer.result().redundancyCount());
    assertNull(answer.result().oddOneOut());
    assertNull(answer.result().unchecked());
    assertNull(answer.result().paths());
    assertTrue(answer.result().farthestDeviations() < 1);
  }

  @Test
  void figuresAreFilledInAndTheirPathsTold() {
    DriverCheckResult result = full().without("qes", "cms_mm_per_n", "bl_tm").result();
    assertEquals(
        "qes from qts qms; cms_mm_per_n from fs_hz mms_g; bl_tm from fs_hz mms_g re_ohm qes",
        result.paths());
    // 0.52·7.09/(7.09 − 0.52) and 10⁶/((2·π·38)²·62)
    assertEquals(0.56116, result.completed().qes(), 5e-6);
    assertEquals(0.28293, result.completed().cmsMmPerN(), 5e-6);
    assertEquals(9.4705, result.completed().blTm(), 5e-5);
  }

  @Test
  void everyFigureFollowsFromMassComplianceLossesMotorAreaAndResistance() {
    DriverCheckResult.Completed completed =
        SheetDraft.woofer().without("fs_hz", "qms", "qes", "qts", "vas_l").result().completed();
    assertEquals(38.198, completed.fsHz(), 5e-4);
    assertEquals(7.0859, completed.qms(), 5e-5);
    assertEquals(0.56059, completed.qes(), 5e-6);
    assertEquals(0.51950, completed.qts(), 6e-6);
    assertEquals(43.246, completed.vasL(), 5e-4);
  }

  @Test
  void anIdentityIsCheckedThroughAFigureThatOthersGive() {
    Answer<DriverCheckResult> answer = full().without("cms_mm_per_n").with("vas_l", 60).answer();
    DriverCheckResult result = answer.result();
    String text = finding(answer, "vas-contradicted").text();
    assertTrue(text.contains("(cms_mm_per_n from fs_hz mms_g)"), text);
    assertNull(result.discrepancy().fsPercent());
    // cms from fs and mms is 0.28293 and gives 43.70 l.
    assertEquals(37.3, result.discrepancy().vasPercent(), 0.05);
  }

  @Test
  void aWrongQtsIsNamedWithItsRightValue() {
    Answer<DriverCheckResult> answer = full().with("qts", 0.47).answer();
    assertEquals(Verdict.WARNING, answer.verdict());
    assertEquals("/qts", finding(answer, "qts-off").pointer());
    assertEquals(0.519, finding(answer, "qts-off").limit(), 5e-4);
    assertEquals("qts", answer.result().oddOneOut());
    assertEquals(0.519, answer.result().oddOneOutImplied(), 5e-4);
    assertEquals("qts", answer.result().farthest());
  }

  @Test
  void beyondThreeTimesTheToleranceItIsAContradiction() {
    Answer<DriverCheckResult> answer = full().with("qts", 0.43).answer();
    assertEquals(Verdict.STOP, answer.verdict());
    assertTrue(has(answer, "qts-contradicted"));
  }

  @Test
  void aTotalQAboveItsPartsIsImpossible() {
    assertTrue(has(full().with("qts", 0.6).answer(), "qts-impossible"));
    assertFalse(has(full().with("qms", 60).with("qts", 0.56).answer(), "qts-impossible"));
  }

  @Test
  void twoFiguresThatNothingTellsApartAreBothSuspected() {
    Answer<DriverCheckResult> answer = SheetDraft.woofer().with("vas_l", 60).answer();
    assertEquals("sd_cm2 vas_l", answer.result().suspects());
    assertNull(answer.result().oddOneOut());
    assertTrue(has(answer, "one-of-several-wrong"));
    // The cone area that 100 litres ask for does not fit into a nominal 250 mm.
    SheetDraft sized = SheetDraft.woofer().with("vas_l", 100).with("nominal_mm", 250);
    assertEquals("vas_l", sized.result().oddOneOut());
  }

  @Test
  void theRatedImpedanceClearsTheResistanceOfAWrongForceFactor() {
    assertEquals("bl_tm", SheetDraft.woofer().with("bl_tm", 12).result().oddOneOut());
  }

  @Test
  void twoWrongFiguresAreNotBlamedOnOne() {
    Answer<DriverCheckResult> answer = full().with("qts", 0.43).with("vas_l", 80).answer();
    assertTrue(has(answer, "several-figures-wrong"));
    assertNull(answer.result().oddOneOut());
  }

  @Test
  void massInKilogramIsRecognised() {
    Answer<DriverCheckResult> answer = full().with("mms_g", 0.062).answer();
    assertEquals("/mms_g", finding(answer, "unit-slip").pointer());
    assertEquals(62, finding(answer, "unit-slip").limit(), 1e-9);
    assertTrue(finding(answer, "unit-slip").text().contains("kg"));
    assertEquals("mms_g", answer.result().oddOneOut());
  }

  @Test
  void volumeInCubicMetresIsRecognisedEvenWhereNothingElseContradictsIt() {
    Answer<DriverCheckResult> answer =
        SheetDraft.woofer()
            .without("cms_mm_per_n", "mms_g", "rms_kg_per_s", "bl_tm")
            .with("vas_l", 0.0432)
            .answer();
    assertEquals(43.2, finding(answer, "unit-slip").limit(), 1e-9);
  }

  @Test
  void aMisplacedPointIsRecognised() {
    Answer<DriverCheckResult> answer = full().with("bl_tm", 0.95).answer();
    assertTrue(finding(answer, "unit-slip").text().contains("decimal point"));
    assertEquals("unit-slip", answer.findings().get(0).code());
  }

  @Test
  void inductanceInHenryIsRecognisedByItsSizeAlone() {
    Answer<DriverCheckResult> answer = full().with("le_mh", 0.0012).answer();
    assertEquals(1.2, finding(answer, "unit-slip").limit(), 1e-12);
  }

  @Test
  void aNominalSizeInAWrongUnitIsTakenForTheOneThatTheConeFits() {
    assertEquals(
        "nominal_mm of 10 looks like a figure in inches: it would be 254 here.",
        finding(full().with("nominal_mm", 10).answer(), "unit-slip").text());
    SheetDraft smaller = new SheetDraft().with("sd_cm2", 133);
    Finding centimetres = finding(smaller.with("nominal_mm", 16.5).answer(), "unit-slip");
    assertEquals(
        "nominal_mm of 16.5 looks like a figure in cm: it would be 165 here.", centimetres.text());
    assertEquals(165, centimetres.limit(), 1e-9);
    String either = "nominal_mm of 10 looks like a figure in inches or a figure in cm: it would be";
    SheetDraft unknown = new SheetDraft().with("fs_hz", 38);
    assertEquals(
        either + " 254 or 100 here.",
        finding(unknown.with("nominal_mm", 10).answer(), "unit-slip").text());
  }

  @Test
  void aSensitivityOnTheOtherBasisIsPointedOut() {
    Answer<DriverCheckResult> answer = SheetDraft.woofer().sensitivity(92, Basis.ONE_WATT).answer();
    assertEquals(2.97, answer.result().discrepancy().sensitivityDb(), 5e-3);
    assertTrue(has(answer, "sensitivity-off"));
    assertTrue(has(answer, "sensitivity-fits-other-basis"));
  }

  @Test
  void anInflatedSensitivityIsTheOddOneOut() {
    Answer<DriverCheckResult> answer =
        SheetDraft.woofer().sensitivity(98, Basis.TWO_POINT_EIGHT_THREE_VOLT).answer();
    assertEquals("sensitivity", answer.result().oddOneOut());
    assertEquals(92.04, answer.result().oddOneOutImplied(), 5e-3);
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 6, 9, 10, 11, 12})
  void anOverstatedSensitivityIsNotTakenForASlipOfAFigureThatIsUsual(double over) {
    double level = Math.round(92.04 + over);
    Basis basis = Basis.TWO_POINT_EIGHT_THREE_VOLT;
    Answer<DriverCheckResult> full = SheetDraft.woofer().sensitivity(level, basis).answer();
    assertEquals("sensitivity", full.result().oddOneOut(), full.findings()::toString);
    // Here nothing but the level is held against fs, vas and qes: no more can be told.
    for (SheetDraft draft :
        List.of(
            SheetDraft.woofer().without("cms_mm_per_n", "sd_cm2"),
            SheetDraft.woofer().without("cms_mm_per_n", "mms_g", "bl_tm", "rms_kg_per_s"),
            new SheetDraft()
                .with("re_ohm", 3.4)
                .with("fs_hz", 38)
                .with("qes", 0.56)
                .with("vas_l", 43.2))) {
      Answer<DriverCheckResult> answer = draft.sensitivity(level, basis).answer();
      assertNull(answer.result().oddOneOut(), answer.findings()::toString);
      assertTrue(answer.result().suspects().contains("sensitivity"));
      assertFalse(has(answer, "unit-slip"));
    }
  }

  @Test
  void noCorrectionIsProposedThatWouldBeObjectedTo() {
    // With 30.5, qts would be 8.6 percent off and qms unusual.
    Answer<DriverCheckResult> answer =
        new SheetDraft().with("qms", 3.05).with("qes", 0.86).with("qts", 0.77).answer();
    assertFalse(has(answer, "unit-slip"), answer.findings()::toString);
    assertNull(answer.result().oddOneOut());
    assertEquals("qes qms qts", answer.result().suspects());
  }

  @Test
  void aDisplacementIsHeldAgainstTheSizeOfItsDriver() {
    SheetDraft draft = new SheetDraft().with("nominal_mm", 165).with("xmax_mm", 60);
    assertTrue(has(draft.answer(), "implausible"), draft.answer().findings()::toString);
    assertTrue(has(draft.with("sd_cm2", 137).answer(), "implausible"));
    assertFalse(has(draft.with("xmax_mm", 8).answer(), "implausible"));
  }

  @Test
  void bothDirectionsTogetherAreFoundWhereSizeOrDepthTellThem() {
    // 137 cm² are 132 mm across: 19.8 mm one way at most. 60 mm deep: 15 mm.
    SheetDraft bySize = new SheetDraft().with("sd_cm2", 137).with("xmax_mm", 24);
    Answer<DriverCheckResult> answer = bySize.answer();
    assertTrue(has(answer, "xmax-peak-to-peak"), answer.findings()::toString);
    assertTrue(answer.findings().get(0).text().endsWith("would be 12 mm one way."));
    assertFalse(has(bySize.with("xmax_mm", 18).answer(), "xmax-peak-to-peak"));
    assertTrue(has(bySize.with("depth_mm", 60).answer(), "xmax-peak-to-peak"));
    SheetDraft byRange = new SheetDraft().with("xmax_mm", 70);
    assertTrue(has(byRange.answer(), "xmax-peak-to-peak"));
    SheetDraft wrongArea = new SheetDraft().with("sd_cm2", 0.0137).with("xmax_mm", 24);
    assertFalse(has(wrongArea.answer(), "xmax-peak-to-peak"), "an area in m² says nothing");
  }

  @Test
  void aWrongBasisAloneDoesNotExchangeQesAndQms() {
    // 6 dB between the bases at 2 ohm, and as much between qes of 0.5 and of 2.
    SheetDraft draft =
        new SheetDraft()
            .with("rated_ohm", 2)
            .with("re_ohm", 1.7)
            .with("fs_hz", 40)
            .with("vas_l", 50)
            .with("qes", 0.5)
            .with("qms", 2);
    double level = draft.result().oneWattLevelDbSpl();
    Answer<DriverCheckResult> answer =
        draft.sensitivity(level, Basis.TWO_POINT_EIGHT_THREE_VOLT).answer();
    assertTrue(has(answer, "sensitivity-fits-other-basis"), answer.findings()::toString);
    assertFalse(has(answer, "qes-and-qms-exchanged"));
    assertNull(answer.result().oddOneOut());
  }

  @Test
  void aVolumeInCubicMetresIsASlipThoughTheSensitivityWouldExplainIt() {
    Answer<DriverCheckResult> answer =
        new SheetDraft()
            .with("re_ohm", 3.4)
            .with("fs_hz", 38)
            .with("qes", 0.56)
            .with("vas_l", 0.0432)
            .sensitivity(92, Basis.TWO_POINT_EIGHT_THREE_VOLT)
            .answer();
    assertEquals("/vas_l", finding(answer, "unit-slip").pointer());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.1, 10, 100})
  void qesAndQtsThatSlippedTogetherAreBlamedAndNotTheForceFactor(double factor) {
    SheetDraft slipped = full().with("qes", 0.56 * factor).with("qts", 0.52 * factor);
    for (String missing : new String[] {"price", "sensitivity", "qms", "rms_kg_per_s"}) {
      Answer<DriverCheckResult> answer = slipped.without(missing).answer();
      Finding finding = finding(answer, "qes-and-qts-wrong");
      assertEquals("/qes", finding.pointer());
      assertEquals(0.5577, finding.limit(), 1e-4);
      assertTrue(finding.text().contains("gives 0.5577 and 0.5"), finding.text());
      assertEquals("qes qts", answer.result().suspects());
      assertEquals("qes", answer.result().oddOneOut());
    }
  }

  @Test
  void qesAndQmsInEachOthersPlaceAreToldBeforeWhatFollowsAndTheRightQtsIsNotBlamed() {
    SheetDraft exchanged = full().with("qes", 7.09).with("qms", 0.56);
    for (String missing : new String[] {"price", "qts", "sensitivity", "rms_kg_per_s"}) {
      Answer<DriverCheckResult> answer = exchanged.without(missing).answer();
      Finding first = answer.findings().get(0);
      assertEquals("qes-and-qms-exchanged", first.code());
      assertEquals(
          "qes of 7.09 and qms of 0.56 look exchanged: the other way round the record agrees.",
          first.text());
      assertEquals("qes qms", answer.result().suspects());
      assertEquals(0.56, answer.result().oddOneOutImplied(), 1e-12);
      assertFalse(has(answer, "qes-and-qts-wrong"));
    }
  }

  @Test
  void qThatAreNotExchangedAreNotSaidToBe() {
    assertFalse(has(full().with("qes", 7.09).answer(), "qes-and-qms-exchanged"));
    // Exchanged, and yet a force factor is left that fits neither.
    SheetDraft more = full().with("qes", 7.09).with("qms", 0.56).with("bl_tm", 15);
    assertFalse(has(more.answer(), "qes-and-qms-exchanged"));
    // The other way round they would fit, as they are so close to each other.
    SheetDraft close = SheetDraft.woofer().without("qts", "rms_kg_per_s").with("qms", 0.557);
    assertFalse(has(close.with("qes", 0.62).answer(), "qes-and-qms-exchanged"));
  }

  @Test
  void qOfAUsualSizeLeavesTheForceFactorTheFirstOfTwoExplanations() {
    Answer<DriverCheckResult> answer =
        SheetDraft.woofer().with("qes", 0.84).with("qts", 0.78).answer();
    assertEquals("bl_tm", answer.result().oddOneOut());
    String text = finding(answer, "odd-one-out").text();
    assertTrue(
        text.endsWith("Or qes and qts are wrong together and would be 0.5577 and 0.517."), text);
  }

  @Test
  void ofEquallyPossibleFiguresTheOneThatIsNotUsualIsBlamed() {
    // Either sd or vas is wrong. 330 cm² are usual; 900 litres are not, but 43 are.
    Answer<DriverCheckResult> answer = SheetDraft.woofer().with("vas_l", 900).answer();
    assertEquals("vas_l", answer.result().oddOneOut());
  }

  @Test
  void theEfficiencyFollowsFromTheMotorToo() {
    DriverCheckResult result =
        SheetDraft.woofer()
            .without("fs_hz", "qms", "qes", "qts", "vas_l", "cms_mm_per_n", "rms_kg_per_s")
            .result();
    // 1.2041/(2·π·343.2)·(330·9.5/620)²/3.4
    assertEquals(0.0041990, result.referenceEfficiency(), 6e-8);
  }

  @Test
  void resistanceAgainstRatedImpedance() {
    assertTrue(has(full().with("rated_ohm", 8).answer(), "re-contradicts-rated"));
    assertTrue(has(new SheetDraft().with("re_ohm", 4.4).answer(), "re-above-rated"));
    assertTrue(has(new SheetDraft().with("re_ohm", 2.4).answer(), "re-low-for-rated"));
    assertFalse(has(new SheetDraft().with("re_ohm", 4.0).answer(), "re-above-rated"));
  }

  @Test
  void fourTimesTheContinuousPowerPassesAndMoreIsANote() {
    SheetDraft draft = new SheetDraft().with("continuous_w", 100);
    assertFalse(has(draft.with("peak_w", 400).answer(), "peak-inflated"));
    Answer<DriverCheckResult> answer = draft.with("peak_w", 1000).answer();
    assertEquals(Verdict.NOTE, finding(answer, "peak-inflated").level());
    assertEquals(10, answer.result().peakOverContinuousDb(), 1e-12);
    assertTrue(has(draft.with("peak_w", 50).answer(), "peak-below-continuous"));
  }

  @Test
  void valuesNoDriverHasAreToldWithTheUsualRange() {
    Answer<DriverCheckResult> unusual = full().with("xmax_mm", 80).answer();
    assertTrue(finding(unusual, "implausible").text().contains("0.3 to 30.75"));
    assertTrue(has(full().with("xmax_mm", 900).answer(), "absurd"));
    assertTrue(
        has(full().with("outside_mm", 260).with("cutout_mm", 262).answer(), "cutout-too-large"));
    assertTrue(has(full().with("nominal_mm", 165).answer(), "size-off"));
  }

  @Test
  void theNominalSizeGivesARoughAreaThatNothingElseRestsOn() {
    Answer<DriverCheckResult> answer =
        new SheetDraft()
            .with("nominal_mm", 250)
            .with("xmax_mm", 10)
            .with("xmax_basis", XmaxBasis.GEOMETRIC)
            .with("vas_l", 43.2)
            .answer();
    assertTrue(has(answer, "area-estimated"));
    // π/4·(0.82·25)²
    assertEquals(330.06, answer.result().completed().sdCm2(), 5e-3);
    assertEquals(330.06, answer.result().displacementCm3(), 5e-3);
    assertEquals("geometric", answer.result().displacementBasis());
    assertNull(answer.result().completed().cmsMmPerN());
  }

  @Test
  void whatCannotBeCheckedIsANoteAndNoFault() {
    Answer<DriverCheckResult> answer = new SheetDraft().answer();
    assertEquals(Verdict.NOTE, answer.verdict());
    assertEquals("qts fs_hz vas_l qes qms sensitivity", answer.result().unchecked());
    assertEquals(0, answer.result().redundancyCount());
    assertNull(answer.result().adjusted());
  }

  @Test
  void aMechanicalQFromRoundedTotalsIsSaidToBeUncertain() {
    Answer<DriverCheckResult> answer =
        new SheetDraft().with("qes", 0.56).with("qts", 0.52).answer();
    assertEquals(7.28, answer.result().completed().qms(), 5e-3);
    assertTrue(has(answer, "poorly-determined"));
  }

  @Test
  void withoutRoundingTheSameDiscrepancyIsJudgedMoreStrictly() {
    SheetDraft draft = full().with("qts", 0.50);
    assertFalse(has(draft.answer(), "qts-off"));
    assertTrue(has(draft.exact().answer(), "qts-off"));
  }

  @Test
  void volumeFollowsTheTemperatureOfTheAir() {
    SheetDraft draft = SheetDraft.woofer().without("vas_l");
    // ρ·c² of an ideal gas is that of its pressure: the same at every temperature.
    double warm = draft.with("temperature_c", 40).result().completed().vasL();
    assertEquals(43.246, warm, 5e-4);
    // Density falls by 293.15/313.15 and speed rises by its root.
    assertEquals(1.1272, draft.result().airDensityKgPerM3(), 5e-5);
  }

  @Test
  void aCatalogueMayLeaveOutTheReconciliationOfWhatAgrees() {
    SheetDraft draft = full().with("reconcile", DriverCheckRequest.Reconcile.WHEN_OFF);
    DriverCheckResult agreeing = draft.result();
    assertNull(agreeing.adjusted());
    assertNull(agreeing.farthest());
    assertNull(agreeing.redundancyCount());
    assertEquals("qts", draft.with("qts", 0.47).result().farthest());
  }

  @Test
  void theWorkingsNameEveryFormula() {
    var answer = Answers.withWorkings(new DriverCheck(), full().without("qes").request());
    List<String> quantities =
        answer.workings().stream().map(step -> step.quantity()).distinct().toList();
    assertTrue(quantities.containsAll(List.of("qes", "fs_hz", "vas_l", "reference_efficiency")));
  }

  @Test
  void onlyWhatIsNoNumberOfADriverIsRefused() {
    List<Fault> faults =
        Answers.faults(
            new DriverCheck(), new SheetDraft().without("rated_ohm").with("qts", -1.0).request());
    assertEquals(
        List.of("/qts", "/rated_ohm"), faults.stream().map(Fault::pointer).sorted().toList());
  }
}
