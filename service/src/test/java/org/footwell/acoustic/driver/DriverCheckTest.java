package org.footwell.acoustic.driver;

import static org.footwell.acoustic.driver.Sheets.answer;
import static org.footwell.acoustic.driver.Sheets.rated;
import static org.footwell.acoustic.driver.Sheets.result;
import static org.footwell.acoustic.driver.Sheets.woofer;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import org.footwell.Answers;
import org.footwell.acoustic.driver.DriverCheckRequest.XmaxBasis;
import org.footwell.acoustic.driver.DriverCheckResult.DisplacementBasis;
import org.footwell.acoustic.driver.sheet.Figure;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Verdict;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DriverCheckTest {

  private static DriverCheckRequestBuilder full() {
    return woofer().sensitivity(new Sensitivity(92.0, Basis.TWO_POINT_EIGHT_THREE_VOLT));
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
    DriverCheckResult result = result(full().xmaxMm(9.0));
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
    Answer<DriverCheckResult> answer = answer(full());
    assertEquals(Verdict.OK, answer.verdict());
    assertEquals(6, answer.result().redundancyCount());
    assertNull(answer.result().oddOneOut());
    assertEquals(List.of(), answer.result().unchecked());
    assertEquals(List.of(), answer.result().paths());
    assertTrue(answer.result().farthestDeviations() < 1);
  }

  @Test
  void figuresAreFilledInAndTheirPathsTold() {
    DriverCheckResult result = result(full().qes(null).cmsMmPerN(null).blTm(null));
    assertEquals(
        List.of(
            "qes from qts qms",
            "cms_mm_per_n from fs_hz mms_g",
            "bl_tm from fs_hz mms_g re_ohm qes"),
        result.paths());
    // 0.52·7.09/(7.09 − 0.52) and 10⁶/((2·π·38)²·62)
    assertEquals(0.56116, result.completed().qes(), 5e-6);
    assertEquals(0.28293, result.completed().cmsMmPerN(), 5e-6);
    assertEquals(9.4705, result.completed().blTm(), 5e-5);
  }

  @Test
  void everyFigureFollowsFromMassComplianceLossesMotorAreaAndResistance() {
    DriverCheckResult.Completed completed =
        result(woofer().fsHz(null).qms(null).qes(null).qts(null).vasL(null)).completed();
    assertEquals(38.198, completed.fsHz(), 5e-4);
    assertEquals(7.0859, completed.qms(), 5e-5);
    assertEquals(0.56059, completed.qes(), 5e-6);
    assertEquals(0.51950, completed.qts(), 6e-6);
    assertEquals(43.246, completed.vasL(), 5e-4);
  }

  @Test
  void anIdentityIsCheckedThroughAFigureThatOthersGive() {
    Answer<DriverCheckResult> answer = answer(full().cmsMmPerN(null).vasL(60.0));
    DriverCheckResult result = answer.result();
    String text = finding(answer, "vas-contradicted").inFull();
    assertTrue(text.contains("(cms_mm_per_n from fs_hz mms_g)"), text);
    assertNull(result.discrepancy().fsPercent());
    // cms from fs and mms is 0.28293 and gives 43.70 l.
    assertEquals(37.3, result.discrepancy().vasPercent(), 0.05);
  }

  @Test
  void aWrongQtsIsNamedWithItsRightValue() {
    Answer<DriverCheckResult> answer = answer(full().qts(0.47));
    assertEquals(Verdict.WARNING, answer.verdict());
    assertEquals("/qts", finding(answer, "qts-off").pointer());
    assertEquals(0.519, finding(answer, "qts-off").limit(), 5e-4);
    assertEquals(Figure.QTS, answer.result().oddOneOut());
    assertEquals(0.519, answer.result().oddOneOutImplied(), 5e-4);
    assertEquals(List.of(Figure.QTS), answer.result().farthest());
  }

  @Test
  void beyondThreeTimesTheToleranceItIsAContradiction() {
    Answer<DriverCheckResult> answer = answer(full().qts(0.43));
    assertEquals(Verdict.STOP, answer.verdict());
    assertTrue(has(answer, "qts-contradicted"));
  }

  @Test
  void aTotalQAboveItsPartsIsImpossible() {
    assertTrue(has(answer(full().qts(0.6)), "qts-impossible"));
    assertFalse(has(answer(full().qms(60.0).qts(0.56)), "qts-impossible"));
  }

  @Test
  void twoFiguresThatNothingTellsApartAreBothSuspected() {
    Answer<DriverCheckResult> answer = answer(woofer().vasL(60.0));
    assertEquals(List.of(Figure.SD_CM2, Figure.VAS_L), answer.result().suspects());
    assertNull(answer.result().oddOneOut());
    assertTrue(has(answer, "one-of-several-wrong"));
    // The cone area that 100 litres ask for does not fit into a nominal 250 mm.
    assertEquals(Figure.VAS_L, result(woofer().vasL(100.0).nominalMm(250.0)).oddOneOut());
  }

  @Test
  void theRatedImpedanceClearsTheResistanceOfAWrongForceFactor() {
    assertEquals(Figure.BL_TM, result(woofer().blTm(12.0)).oddOneOut());
  }

  @Test
  void twoWrongFiguresAreNotBlamedOnOne() {
    Answer<DriverCheckResult> answer = answer(full().qts(0.43).vasL(80.0));
    assertTrue(has(answer, "several-figures-wrong"));
    assertNull(answer.result().oddOneOut());
  }

  @Test
  void massInKilogramIsRecognised() {
    Answer<DriverCheckResult> answer = answer(full().mmsG(0.062));
    assertEquals("/mms_g", finding(answer, "unit-slip").pointer());
    assertEquals(62, finding(answer, "unit-slip").limit(), 1e-9);
    assertTrue(finding(answer, "unit-slip").inFull().contains("kg"));
    assertEquals(Figure.MMS_G, answer.result().oddOneOut());
  }

  @Test
  void volumeInCubicMetresIsRecognisedEvenWhereNothingElseContradictsIt() {
    Answer<DriverCheckResult> answer =
        answer(woofer().cmsMmPerN(null).mmsG(null).rmsKgPerS(null).blTm(null).vasL(0.0432));
    assertEquals(43.2, finding(answer, "unit-slip").limit(), 1e-9);
  }

  @Test
  void aMisplacedPointIsRecognised() {
    Answer<DriverCheckResult> answer = answer(full().blTm(0.95));
    assertTrue(finding(answer, "unit-slip").inFull().contains("decimal point"));
    assertEquals("unit-slip", answer.findings().get(0).code());
  }

  @Test
  void inductanceInHenryIsRecognisedByItsSizeAlone() {
    Answer<DriverCheckResult> answer = answer(full().leMh(0.0012));
    assertEquals(1.2, finding(answer, "unit-slip").limit(), 1e-12);
  }

  @Test
  void aNominalSizeInAWrongUnitIsTakenForTheOneThatTheConeFits() {
    assertEquals(
        "nominal_mm of 10 looks like a figure in inches: it would be 254 here. Check"
            + " the unit and the decimal point.",
        finding(answer(full().nominalMm(10.0)), "unit-slip").inFull());
    Finding centimetres = finding(answer(rated().sdCm2(133.0).nominalMm(16.5)), "unit-slip");
    assertEquals(
        "nominal_mm of 16.5 looks like a figure in cm: it would be 165 here.", centimetres.text());
    assertEquals(165, centimetres.limit(), 1e-9);
    String either = "nominal_mm of 10 looks like a figure in inches or a figure in cm: it would be";
    assertEquals(
        either + " 254 or 100 here.",
        finding(answer(rated().fsHz(38.0).nominalMm(10.0)), "unit-slip").text());
  }

  @Test
  void aSensitivityOnTheOtherBasisIsPointedOut() {
    Answer<DriverCheckResult> answer =
        answer(woofer().sensitivity(new Sensitivity(92.0, Basis.ONE_WATT)));
    assertEquals(2.97, answer.result().discrepancy().sensitivityDb(), 5e-3);
    assertTrue(has(answer, "sensitivity-off"));
    assertTrue(has(answer, "sensitivity-fits-other-basis"));
  }

  @Test
  void anInflatedSensitivityIsTheOddOneOut() {
    Answer<DriverCheckResult> answer =
        answer(woofer().sensitivity(new Sensitivity(98.0, Basis.TWO_POINT_EIGHT_THREE_VOLT)));
    assertEquals(Figure.SENSITIVITY, answer.result().oddOneOut());
    assertEquals(92.04, answer.result().oddOneOutImplied(), 5e-3);
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 6, 9, 10, 11, 12})
  void anOverstatedSensitivityIsNotTakenForASlipOfAFigureThatIsUsual(double over) {
    double level = Math.round(92.04 + over);
    Basis basis = Basis.TWO_POINT_EIGHT_THREE_VOLT;
    Answer<DriverCheckResult> full = answer(woofer().sensitivity(new Sensitivity(level, basis)));
    assertEquals(Figure.SENSITIVITY, full.result().oddOneOut(), full.findings()::toString);
    // Here nothing but the level is held against fs, vas and qes: no more can be told.
    for (DriverCheckRequestBuilder draft :
        List.of(
            woofer().cmsMmPerN(null).sdCm2(null),
            woofer().cmsMmPerN(null).mmsG(null).blTm(null).rmsKgPerS(null),
            rated().reOhm(3.4).fsHz(38.0).qes(0.56).vasL(43.2))) {
      Answer<DriverCheckResult> answer = answer(draft.sensitivity(new Sensitivity(level, basis)));
      assertNull(answer.result().oddOneOut(), answer.findings()::toString);
      assertTrue(answer.result().suspects().contains(Figure.SENSITIVITY));
      assertFalse(has(answer, "unit-slip"));
    }
  }

  @Test
  void noCorrectionIsProposedThatWouldBeObjectedTo() {
    // With 30.5, qts would be 8.6 percent off and qms unusual.
    Answer<DriverCheckResult> answer = answer(rated().qms(3.05).qes(0.86).qts(0.77));
    assertFalse(has(answer, "unit-slip"), answer.findings()::toString);
    assertNull(answer.result().oddOneOut());
    assertEquals(List.of(Figure.QES, Figure.QMS, Figure.QTS), answer.result().suspects());
  }

  @Test
  void aDisplacementIsHeldAgainstTheSizeOfItsDriver() {
    DriverCheckRequestBuilder draft = rated().nominalMm(165.0).xmaxMm(60.0);
    assertTrue(has(answer(draft), "implausible"), answer(draft).findings()::toString);
    assertTrue(has(answer(draft.sdCm2(137.0)), "implausible"));
    assertFalse(has(answer(draft.xmaxMm(8.0)), "implausible"));
  }

  @Test
  void bothDirectionsTogetherAreFoundWhereSizeOrDepthTellThem() {
    // 137 cm² are 132 mm across: 19.8 mm one way at most. 60 mm deep: 15 mm.
    DriverCheckRequestBuilder bySize = rated().sdCm2(137.0).xmaxMm(24.0);
    Answer<DriverCheckResult> answer = answer(bySize);
    assertTrue(has(answer, "xmax-peak-to-peak"), answer.findings()::toString);
    assertTrue(answer.findings().get(0).text().endsWith("would be 12 mm one way."));
    assertFalse(has(answer(bySize.xmaxMm(18.0)), "xmax-peak-to-peak"));
    assertTrue(has(answer(bySize.mountingDepthMm(60.0)), "xmax-peak-to-peak"));
    assertTrue(has(answer(rated().xmaxMm(70.0)), "xmax-peak-to-peak"));
    assertFalse(
        has(answer(rated().sdCm2(0.0137).xmaxMm(24.0)), "xmax-peak-to-peak"),
        "an area in m² says nothing");
  }

  @Test
  void aWrongBasisAloneDoesNotExchangeQesAndQms() {
    // 6 dB between the bases at 2 ohm, and as much between qes of 0.5 and of 2.
    DriverCheckRequestBuilder draft =
        rated().ratedOhm(2.0).reOhm(1.7).fsHz(40.0).vasL(50.0).qes(0.5).qms(2.0);
    double level = result(draft).oneWattLevelDbSpl();
    Answer<DriverCheckResult> answer =
        answer(draft.sensitivity(new Sensitivity(level, Basis.TWO_POINT_EIGHT_THREE_VOLT)));
    assertTrue(has(answer, "sensitivity-fits-other-basis"), answer.findings()::toString);
    assertFalse(has(answer, "qes-and-qms-exchanged"));
    assertNull(answer.result().oddOneOut());
  }

  @Test
  void aVolumeInCubicMetresIsASlipThoughTheSensitivityWouldExplainIt() {
    Answer<DriverCheckResult> answer =
        answer(
            rated()
                .reOhm(3.4)
                .fsHz(38.0)
                .qes(0.56)
                .vasL(0.0432)
                .sensitivity(new Sensitivity(92.0, Basis.TWO_POINT_EIGHT_THREE_VOLT)));
    assertEquals("/vas_l", finding(answer, "unit-slip").pointer());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.1, 10, 100})
  void qesAndQtsThatSlippedTogetherAreBlamedAndNotTheForceFactor(double factor) {
    DriverCheckRequestBuilder slipped = full().qes(0.56 * factor).qts(0.52 * factor);
    for (UnaryOperator<DriverCheckRequestBuilder> without :
        List.<UnaryOperator<DriverCheckRequestBuilder>>of(
            d -> d.price(null),
            d -> d.sensitivity(null),
            d -> d.qms(null),
            d -> d.rmsKgPerS(null))) {
      Answer<DriverCheckResult> answer = answer(without.apply(slipped));
      Finding finding = finding(answer, "qes-and-qts-wrong");
      assertEquals("/qes", finding.pointer());
      assertEquals(0.5577, finding.limit(), 1e-4);
      assertTrue(finding.inFull().contains("gives 0.5577 and 0.5"), finding.inFull());
      assertEquals(List.of(Figure.QES, Figure.QTS), answer.result().suspects());
      assertEquals(Figure.QES, answer.result().oddOneOut());
    }
  }

  @Test
  void qesAndQmsInEachOthersPlaceAreToldBeforeWhatFollowsAndTheRightQtsIsNotBlamed() {
    DriverCheckRequestBuilder exchanged = full().qes(7.09).qms(0.56);
    for (UnaryOperator<DriverCheckRequestBuilder> without :
        List.<UnaryOperator<DriverCheckRequestBuilder>>of(
            d -> d.price(null),
            d -> d.qts(null),
            d -> d.sensitivity(null),
            d -> d.rmsKgPerS(null))) {
      Answer<DriverCheckResult> answer = answer(without.apply(exchanged));
      Finding first = answer.findings().get(0);
      assertEquals("qes-and-qms-exchanged", first.code());
      assertEquals(
          "qes of 7.09 and qms of 0.56 look exchanged: the other way round the record agrees.",
          first.text());
      assertEquals(List.of(Figure.QES, Figure.QMS), answer.result().suspects());
      assertEquals(0.56, answer.result().oddOneOutImplied(), 1e-12);
      assertFalse(has(answer, "qes-and-qts-wrong"));
    }
  }

  @Test
  void qThatAreNotExchangedAreNotSaidToBe() {
    assertFalse(has(answer(full().qes(7.09)), "qes-and-qms-exchanged"));
    // Exchanged, and yet a force factor is left that fits neither.
    assertFalse(has(answer(full().qes(7.09).qms(0.56).blTm(15.0)), "qes-and-qms-exchanged"));
    // The other way round they would fit, as they are so close to each other.
    assertFalse(
        has(
            answer(woofer().qts(null).rmsKgPerS(null).qms(0.557).qes(0.62)),
            "qes-and-qms-exchanged"));
  }

  @Test
  void qOfAUsualSizeLeavesTheForceFactorTheFirstOfTwoExplanations() {
    Answer<DriverCheckResult> answer = answer(woofer().qes(0.84).qts(0.78));
    assertEquals(Figure.BL_TM, answer.result().oddOneOut());
    String text = finding(answer, "odd-one-out").text();
    assertTrue(
        text.endsWith("Or qes and qts are wrong together and would be 0.5577 and 0.517."), text);
  }

  @Test
  void ofEquallyPossibleFiguresTheOneThatIsNotUsualIsBlamed() {
    // Either sd or vas is wrong. 330 cm² are usual; 900 litres are not, but 43 are.
    Answer<DriverCheckResult> answer = answer(woofer().vasL(900.0));
    assertEquals(Figure.VAS_L, answer.result().oddOneOut());
  }

  @Test
  void theEfficiencyFollowsFromTheMotorToo() {
    DriverCheckResult result =
        result(
            woofer()
                .fsHz(null)
                .qms(null)
                .qes(null)
                .qts(null)
                .vasL(null)
                .cmsMmPerN(null)
                .rmsKgPerS(null));
    // 1.2041/(2·π·343.2)·(330·9.5/620)²/3.4
    assertEquals(0.0041990, result.referenceEfficiency(), 6e-8);
  }

  @Test
  void resistanceAgainstRatedImpedance() {
    assertTrue(has(answer(full().ratedOhm(8.0)), "re-contradicts-rated"));
    assertTrue(has(answer(rated().reOhm(4.4)), "re-above-rated"));
    assertTrue(has(answer(rated().reOhm(2.4)), "re-low-for-rated"));
    assertFalse(has(answer(rated().reOhm(4.0)), "re-above-rated"));
  }

  @Test
  void fourTimesTheContinuousPowerPassesAndMoreIsANote() {
    DriverCheckRequestBuilder draft = rated().continuousPowerW(100.0);
    assertFalse(has(answer(draft.peakPowerW(400.0)), "peak-inflated"));
    Answer<DriverCheckResult> answer = answer(draft.peakPowerW(1000.0));
    assertEquals(Verdict.NOTE, finding(answer, "peak-inflated").level());
    assertEquals(10, answer.result().peakOverContinuousDb(), 1e-12);
    assertTrue(has(answer(draft.peakPowerW(50.0)), "peak-below-continuous"));
  }

  @Test
  void valuesNoDriverHasAreToldWithTheUsualRange() {
    Answer<DriverCheckResult> unusual = answer(full().xmaxMm(80.0));
    assertTrue(finding(unusual, "implausible").inFull().contains("0.3 to 30.75"));
    assertTrue(has(answer(full().xmaxMm(900.0)), "absurd"));
    assertTrue(has(answer(full().outsideMm(260.0).cutoutMm(262.0)), "cutout-too-large"));
    assertTrue(has(answer(full().nominalMm(165.0)), "size-off"));
  }

  @Test
  void theNominalSizeGivesARoughAreaThatNothingElseRestsOn() {
    Answer<DriverCheckResult> answer =
        answer(rated().nominalMm(250.0).xmaxMm(10.0).xmaxBasis(XmaxBasis.GEOMETRIC).vasL(43.2));
    assertTrue(has(answer, "area-estimated"));
    // π/4·(0.82·25)²
    assertEquals(330.06, answer.result().completed().sdCm2(), 5e-3);
    assertEquals(330.06, answer.result().displacementCm3(), 5e-3);
    assertEquals(DisplacementBasis.GEOMETRIC, answer.result().displacementBasis());
    assertNull(answer.result().completed().cmsMmPerN());
  }

  @Test
  void whatCannotBeCheckedIsANoteAndNoFault() {
    Answer<DriverCheckResult> answer = answer(rated());
    assertEquals(Verdict.NOTE, answer.verdict());
    assertEquals(
        List.of(Figure.QTS, Figure.FS_HZ, Figure.VAS_L, Figure.QES, Figure.QMS, Figure.SENSITIVITY),
        answer.result().unchecked());
    assertEquals(0, answer.result().redundancyCount());
    assertNull(answer.result().adjusted());
  }

  @Test
  void aMechanicalQFromRoundedTotalsIsSaidToBeUncertain() {
    Answer<DriverCheckResult> answer = answer(rated().qes(0.56).qts(0.52));
    assertEquals(7.28, answer.result().completed().qms(), 5e-3);
    assertTrue(has(answer, "poorly-determined"));
  }

  @Test
  void withoutRoundingTheSameDiscrepancyIsJudgedMoreStrictly() {
    DriverCheckRequestBuilder draft = full().qts(0.50);
    assertFalse(has(answer(draft), "qts-off"));
    assertTrue(has(answer(draft.tolerance(Sheets.EXACT)), "qts-off"));
  }

  @Test
  void volumeFollowsTheTemperatureOfTheAir() {
    DriverCheckRequestBuilder draft = woofer().vasL(null);
    // ρ·c² of an ideal gas is that of its pressure: the same at every temperature.
    double warm = result(draft.temperatureC(40.0)).completed().vasL();
    assertEquals(43.246, warm, 5e-4);
    // Density falls by 293.15/313.15 and speed rises by its root.
    assertEquals(1.1272, result(draft).airDensityKgPerM3(), 5e-5);
  }

  @Test
  void aCatalogueMayLeaveOutTheReconciliationOfWhatAgrees() {
    DriverCheckRequestBuilder draft = full().reconcile(DriverCheckRequest.Reconcile.WHEN_OFF);
    DriverCheckResult agreeing = result(draft);
    assertNull(agreeing.adjusted());
    assertEquals(List.of(), agreeing.farthest());
    assertNull(agreeing.redundancyCount());
    assertEquals(List.of(Figure.QTS), result(draft.qts(0.47)).farthest());
  }

  @Test
  void theWorkingsNameEveryFormula() {
    var answer = Answers.withWorkings(new DriverCheck(), full().qes(null).build());
    List<String> quantities =
        answer.workings().stream().map(step -> step.quantity()).distinct().toList();
    assertTrue(quantities.containsAll(List.of("qes", "fs_hz", "vas_l", "reference_efficiency")));
  }

  @Test
  void onlyWhatIsNoNumberOfADriverIsRefused() {
    List<Fault> faults =
        Answers.faults(new DriverCheck(), rated().ratedOhm(null).qts(-1.0).build());
    assertEquals(
        List.of("/qts", "/rated_ohm"), faults.stream().map(Fault::pointer).sorted().toList());
  }
}
