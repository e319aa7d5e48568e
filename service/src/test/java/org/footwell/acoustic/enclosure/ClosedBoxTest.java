package org.footwell.acoustic.enclosure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.enclosure.lowend.BoxLimits;
import org.footwell.acoustic.enclosure.lowend.BoxPoint;
import org.footwell.acoustic.enclosure.lowend.BoxPoint.Limit;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Step;
import org.footwell.calculation.text.Texts;
import org.footwell.parts.BoxBuilder;
import org.footwell.parts.Cabin.TransferPoint;
import org.footwell.parts.CabinBuilder;
import org.footwell.parts.Filter;
import org.footwell.parts.LeakyBaffle;
import org.junit.jupiter.api.Test;

class ClosedBoxTest {

  /** Driver of the method page in 10 litre: alpha 3, everything doubles. */
  private static ClosedBoxDraft hand() {
    return new ClosedBoxDraft();
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    ClosedBoxResult r = hand().at(80).result();
    assertEquals(3, r.alpha(), 1e-12);
    assertEquals(0.5, r.qts(), 1e-12);
    assertEquals(80, r.fcHz(), 1e-9);
    assertEquals(8, r.qmc(), 1e-12);
    assertEquals(8.0 / 7, r.qec(), 1e-12);
    assertEquals(1, r.qtc(), 1e-12);
    // 80 Hz · √((√5 − 1)/2)
    assertEquals(62.892, r.response().f3Hz(), 0.001);
    // k = 9, b = −1: x² = (−1 + √37)/18 = 0.282376
    assertEquals(42.511, r.response().f10Hz(), 0.001);
    // 20·lg(1/√0.75) at 80/√0.5
    assertEquals(1.2494, r.response().peakDb(), 1e-4);
    assertEquals(113.137, r.response().peakHz(), 0.001);
    // η = 4·π²/343.2³·40³·0.03/(4/7) = 0.32814 %; √(η·1.2041·343.2/(2·π)) = 0.46457 Pa: 87.320 dB
    // for 1 W into 3.2 ohm, and 1 V is 10·lg(3.2) = 5.051 dB less.
    assertEquals(82.269, r.response().referenceLevelDbSpl(), 0.001);
  }

  @Test
  void atTheResonanceOfQOneTheLevelIsTheReferenceAndThePhaseNinetyDegrees() {
    ClosedBoxResult r = hand().at(80).result();
    BoxPoint point = r.points().get(0);
    assertEquals(r.response().referenceLevelDbSpl(), point.levelDbSpl(), 1e-9);
    assertEquals(90, point.phaseDeg(), 1e-9);
    // 2·Q/ω0 = 2/(2·π·80) s
    assertEquals(3.97887, point.groupDelayMs(), 1e-5);
    assertNull(point.portVelocityMPerS());
    assertNull(point.maxLevelDbSpl());
    assertNull(point.cabinGainDb());
  }

  @Test
  void theVolumeForAWantedQIsTheOneThatGivesIt() {
    ClosedBoxDraft draft = hand();
    draft.box.volumeL(null).qtc(1.0).driverDisplacementL(1.5).bracingL(0.5);
    ClosedBoxResult r = draft.result();
    assertEquals(10, r.volumeL(), 1e-9);
    assertEquals(12, r.grossVolumeL(), 1e-9);
    draft.box.fillFactor(1.25);
    assertEquals(8, draft.result().volumeL(), 1e-9);
    draft.box.qa(5.0).ql(10.0);
    ClosedBoxResult lossy = draft.result();
    assertEquals(1, lossy.qtc(), 1e-12);
    assertTrue(lossy.volumeL() < 8);
  }

  @Test
  void absorptionCountsByItsShareOfTheStiffness() {
    ClosedBoxDraft draft = hand();
    draft.box.qa(5.0);
    // 1/(1 + 0.2·0.75)
    assertEquals(1 / 1.15, draft.result().qtc(), 1e-12);
    draft.box.ql(7.0);
    assertEquals(1 / (1 + 0.75 * (0.2 + 7.0 / 50)), draft.result().qtc(), 1e-12);
  }

  @Test
  void aResistanceInTheCableRaisesTheElectricalQAndTakesLevel() {
    ClosedBoxDraft draft = hand().at(80);
    ClosedBoxResult without = draft.result();
    draft.played.sourceOhm(0.8);
    ClosedBoxResult with = draft.result();
    assertEquals(without.qec() * 1.25, with.qec(), 1e-12);
    assertEquals(
        20 * Math.log10(1.25),
        without.response().referenceLevelDbSpl() - with.response().referenceLevelDbSpl(),
        1e-9);
    assertTrue(with.qtc() > without.qtc());
  }

  @Test
  void powerIsCountedIntoTheRatedImpedance() {
    ClosedBoxDraft draft = hand();
    draft.played.voltageV(null).powerW(100.0);
    ClosedBoxResult r = draft.result();
    assertEquals(20, r.limits().voltageV(), 1e-12);
    assertEquals(100, r.limits().powerW(), 1e-12);
  }

  @Test
  void theChannelsFiltersAreInDriveAndDisplacementButNotInTheAlignment() {
    ClosedBoxDraft draft = hand().at(20, 80);
    draft.driver.xmaxMm(5.0).continuousPowerW(100.0);
    ClosedBoxResult open = draft.result();
    draft
        .played
        .highPass(Filter.of(Filter.Kind.LINKWITZ_RILEY, 4, 80.0))
        .lowPass(Filter.of(Filter.Kind.BUTTERWORTH, 2, 20.0));
    ClosedBoxResult filtered = draft.result();
    BoxPoint before = open.points().get(1);
    BoxPoint after = filtered.points().get(1);
    // At 80 Hz the high-pass takes half, the low-pass 1/√(1 + 4⁴).
    double left = 0.5 / Math.sqrt(257);
    assertEquals(before.displacementMm() * left, after.displacementMm(), 1e-9);
    assertEquals(20 * Math.log10(left), after.levelDbSpl() - before.levelDbSpl(), 1e-9);
    assertEquals(before.displacementLimitedDbSpl(), after.displacementLimitedDbSpl(), 1e-9);
    assertEquals(before.thermallyLimitedDbSpl(), after.thermallyLimitedDbSpl(), 1e-9);
    assertTrue(after.groupDelayMs() > before.groupDelayMs());
    assertEquals(open.response(), filtered.response());
    assertTrue(filtered.limits().displacementPowerW() > open.limits().displacementPowerW());
  }

  @Test
  void aFilterThatDoesNotExistIsRefused() {
    ClosedBoxDraft draft = hand();
    draft
        .played
        .highPass(Filter.of(Filter.Kind.LINKWITZ_RILEY, 3, 30.0))
        .lowPass(Filter.of(Filter.Kind.LINKWITZ_RILEY, 5, 80.0));
    assertEquals(
        List.of("/high_pass/order", "/low_pass/order"),
        draft.faults().stream().map(Fault::pointer).toList());
  }

  @Test
  void theLowerOfDisplacementAndHeatIsMarked() {
    ClosedBoxDraft draft = hand().at(20, 200);
    draft.driver.xmaxMm(5.0).continuousPowerW(100.0);
    ClosedBoxResult r = draft.result();
    BoxPoint low = r.points().get(0);
    BoxPoint high = r.points().get(1);
    assertEquals(Limit.DISPLACEMENT, low.limitedBy());
    assertEquals(low.displacementLimitedDbSpl(), low.maxLevelDbSpl());
    assertEquals(
        low.levelDbSpl() + 20 * Math.log10(5 / low.displacementMm()), low.maxLevelDbSpl(), 1e-9);
    assertEquals(Limit.THERMAL, high.limitedBy());
    // 100 W into 4 ohm are 20 V, 26.0206 dB over 1 V.
    assertEquals(high.levelDbSpl() + 26.0206, high.maxLevelDbSpl(), 1e-4);
  }

  @Test
  void tooMuchDisplacementIsFoundWithThePowerThatIsLeftAndAFilterThatHelps() {
    ClosedBoxDraft draft = hand().qts(0.35).range(10, 200);
    draft.box.volumeL(30.0);
    draft.driver.xmaxMm(6.0);
    draft.played.voltageV(1.3 * 6 / draft.result().limits().largestDisplacementMm());
    Answer<ClosedBoxResult> answer = draft.answer();
    BoxLimits limits = answer.result().limits();
    assertFalse(limits.xmaxKept());
    assertTrue(Answers.codes(answer).contains("displacement-beyond-xmax"));
    ClosedBoxDraft less = hand().qts(0.35).range(10, 200);
    less.box.volumeL(30.0);
    less.played.voltageV(null).powerW(limits.displacementPowerW());
    less.driver.xmaxMm(6.0);
    assertEquals(6, less.result().limits().largestDisplacementMm(), 1e-9);
    assertNotNull(limits.subsonic());
    assertNull(limits.subsonic().besselNormalisation());
    double worst = 0;
    for (BoxPoint p : draft.result().points()) {
      double filtered =
          p.displacementMm()
              * Math.pow(10, limits.subsonic().highPass().magnitudeDb(p.frequencyHz()) / 20);
      worst = Math.max(worst, filtered);
    }
    assertTrue(worst <= 6 * (1 + 1e-6), "goes to " + worst);
    assertTrue(worst > 5.9, "asks for more than is needed: " + worst);
  }

  @Test
  void belowTheFrequencyNamedTheConeGoesTooFar() {
    ClosedBoxDraft draft = hand().range(10, 200);
    draft.played.voltageV(30.0);
    draft.driver.xmaxMm(6.0);
    double edge = draft.result().limits().xmaxExceededBelowHz();
    List<BoxPoint> around = draft.at(edge * 0.99, edge, edge * 1.01).result().points();
    assertTrue(around.get(0).displacementMm() > 6);
    assertEquals(6, around.get(1).displacementMm(), 1e-6);
    assertTrue(around.get(2).displacementMm() < 6);
  }

  @Test
  void whenAFilterWouldCostTheBassThePowerIsSaidInstead() {
    ClosedBoxDraft draft = hand().range(10, 200);
    draft.played.voltageV(200.0);
    draft.driver.xmaxMm(2.0);
    Answer<ClosedBoxResult> answer = draft.answer();
    assertTrue(Answers.codes(answer).contains("subsonic-filter-not-enough"));
    assertNull(answer.result().limits().subsonic());
  }

  @Test
  void withoutXmaxThereIsNoVerdictOnDisplacement() {
    Answer<ClosedBoxResult> answer = hand().answer();
    assertTrue(Answers.codes(answer).contains("xmax-not-given"));
    assertNull(answer.result().limits().xmaxKept());
  }

  @Test
  void aRippleWantedIsThePeakOfTheBoxThatIsFound() {
    ClosedBoxDraft draft = hand();
    for (double ripple : new double[] {0, 0.1, 0.5, 1, 3}) {
      draft.box.volumeL(null).rippleDb(ripple);
      assertEquals(ripple, draft.result().response().peakDb(), 1e-9);
    }
    draft.box.rippleDb(0.0);
    assertEquals(Math.sqrt(0.5), draft.result().qtc(), 1e-12);
    draft.qts(1.2);
    assertEquals("/box/ripple_db", draft.faults().get(0).pointer());
  }

  @Test
  void aHugeBaffleWhoseLeaksEndOutdoorsLeavesTheDriverAlmostAsInFreeAir() {
    ClosedBoxDraft draft = hand().at(40);
    draft.played.baffle(new LeakyBaffle(10000.0, 0.02, false));
    Answer<ClosedBoxResult> answer = draft.answer();
    ClosedBoxResult r = answer.result();
    // Q 0.5 in free air: −6 dB at resonance, half power at 1.5538 of it.
    assertEquals(
        -6.0206, r.points().get(0).levelDbSpl() - r.response().referenceLevelDbSpl(), 0.05);
    assertEquals(62.15, r.response().f3Hz(), 0.3);
    assertNull(r.qtc());
    assertNull(r.grossVolumeL());
    assertTrue(Answers.codes(answer).contains("leaky-baffle-model"));
  }

  @Test
  void aLeakThatIsHeardTakesBass() {
    ClosedBoxDraft draft = hand().at(30);
    draft.played.baffle(new LeakyBaffle(60.0, 0.3, true));
    double heard = draft.result().points().get(0).levelDbSpl();
    double f3 = draft.result().response().f3Hz();
    draft.played.baffle(new LeakyBaffle(60.0, 0.3, false));
    assertTrue(draft.result().points().get(0).levelDbSpl() > heard + 10);
    assertTrue(draft.result().response().f3Hz() < f3);
  }

  @Test
  void whatIsUnusualIsSaid() {
    ClosedBoxDraft draft = hand().range(10, 500);
    draft.played.voltageV(null).powerW(200.0);
    draft.driver.continuousPowerW(150.0);
    draft.box.volumeL(3.0).fillFactor(1.3).spaceL(2.5);
    List<String> codes = Answers.codes(draft.answer());
    assertTrue(
        codes.containsAll(
            List.of(
                "power-beyond-rating",
                "qtc-high",
                "response-peak-high",
                "fill-optimistic",
                "box-larger-than-space",
                "lumped-model-limit")),
        codes::toString);
  }

  @Test
  void theModelHoldsUpToAnEighthOfAWavelength() {
    ClosedBoxDraft draft = hand();
    draft.box.longestInsideMm(400.0);
    // 343.2/(8·0.4)
    assertEquals(107.25, draft.result().limits().modelLimitHz(), 1e-9);
    // The cube of 10 litre has sides of 215 mm; the cone has ka 1 at 684 Hz.
    draft.box.longestInsideMm(null);
    assertEquals(343.2 / 8 / Math.cbrt(0.01), draft.result().limits().modelLimitHz(), 1e-9);
  }

  @Test
  void aLengthThatCannotHoldTheVolumeIsRefused() {
    ClosedBoxDraft draft = hand();
    draft.box.driverDisplacementL(2.0);
    // The cube of 12 litre has sides of 228.94 mm.
    draft.box.longestInsideMm(220.0);
    Fault fault = draft.faults().get(0);
    assertEquals("longest-too-short", fault.code());
    assertEquals("/box/longest_inside_mm", fault.pointer());
    assertEquals(
        "A box that is 220.0 mm long inside at its longest holds 10.65 litre at most,"
            + " not the 12 litre of its air and all that is in it: box.longest_inside_mm must"
            + " be at least 229 mm.",
        fault.detail());
    draft.box.longestInsideMm(228.0);
    assertEquals(12, draft.result().grossVolumeL(), 1e-12);
  }

  @Test
  void aLengthThatLeavesTheDriverNoRoomIsRemarked() {
    ClosedBoxDraft draft = hand();
    // 10 litre over 1510 mm are 66.2 cm², a third of the cone's 200 cm² are 66.7.
    draft.box.longestInsideMm(1510.0);
    assertTrue(draft.says("box-like-a-tube").contains("66.23 cm²"));
    draft.box.longestInsideMm(1490.0);
    assertFalse(Answers.codes(draft.answer()).contains("box-like-a-tube"));
  }

  @Test
  void aPeakAboveTheBassIsNotCalledBoomy() {
    ClosedBoxDraft draft = hand();
    draft.box.volumeL(1.0);
    // alpha 30: fc 222.7 Hz, Q 2.784, the peak of 9 dB a little above.
    assertTrue(draft.result().response().peakHz() > 200);
    assertFalse(Answers.codes(draft.answer()).contains("response-peak-high"));
    assertTrue(draft.says("peak-above-bass").contains("above the bass"));
    draft.box.volumeL(2.0);
    assertTrue(draft.result().response().peakHz() < 200);
    assertTrue(draft.says("response-peak-high").contains("boomy"));
  }

  @Test
  void aQTooLowAndAQTooHighAreTwoSentences() {
    ClosedBoxDraft draft = hand().qts(0.3);
    draft.box.volumeL(30.0);
    String low = draft.says("qtc-low");
    assertTrue(low.contains("A smaller box raises it") && !low.contains("larger"), low);
    draft.box.volumeL(1.0);
    String high = draft.says("qtc-high");
    assertTrue(high.contains("the driver's own 0.3") && !high.contains("smaller"), high);
    assertFalse(Answers.codes(draft.answer()).contains("qtc-low"));
  }

  @Test
  void aBaffleIsNotAdvisedToBeASmallerBox() {
    ClosedBoxDraft draft = hand().range(10, 200);
    draft.played.voltageV(60.0);
    draft.driver.xmaxMm(3.0);
    assertTrue(draft.says("displacement-beyond-xmax").contains("smaller box"));
    // A door, and a box so large that it is an infinite baffle.
    draft.box.volumeL(301.0);
    assertFalse(draft.says("displacement-in-baffle").contains("box"));
    draft.played.baffle(new LeakyBaffle(60.0, 1.0, false));
    assertFalse(draft.says("displacement-in-baffle").contains("box"));
    assertFalse(Answers.codes(draft.answer()).contains("displacement-beyond-xmax"));
  }

  @Test
  void theModelsLimitIsSaidWhereTheAnswerDependsOnIt() {
    ClosedBoxDraft draft = hand();
    draft.box.volumeL(30.0).longestInsideMm(400.0);
    // Half power at 56 Hz, the limit 107 Hz: that the range taken goes to 200 Hz is no news.
    List<String> codes = Answers.codes(draft.answer());
    assertFalse(codes.contains("lumped-model-limit"), codes::toString);
    assertFalse(codes.contains("figures-beyond-model"), codes::toString);
    draft.at(20, 150);
    assertTrue(draft.says("lumped-model-limit").contains("150 Hz"));
    // 343.2/(8·0.8) = 53.6 Hz is below the half power.
    draft.played.frequencies(null);
    draft.box.longestInsideMm(800.0);
    assertEquals(
        "Air in the box and the cone act as one piece up to 53.62 Hz only; what lies above is"
            + " no more than a guess: f3 at "
            + Texts.forPeople(draft.result().response().f3Hz())
            + " Hz. Measure it.",
        draft.says("figures-beyond-model"));
  }

  @Test
  void withoutAContinuousPowerNothingIsSaidAboutHeat() {
    ClosedBoxDraft draft = hand();
    draft.played.voltageV(20.0);
    assertTrue(draft.says("continuous-power-not-given").contains("takes 100 W"));
    draft.driver.continuousPowerW(100.0);
    assertFalse(Answers.codes(draft.answer()).contains("continuous-power-not-given"));
  }

  @Test
  void aQBelowThatOfFreeAirIsRefused() {
    ClosedBoxDraft draft = hand();
    draft.box.volumeL(null).qtc(0.45);
    List<Fault> faults = draft.faults();
    assertEquals(1, faults.size());
    assertEquals("qtc-unreachable", faults.get(0).code());
    assertEquals("/box/qtc", faults.get(0).pointer());
    draft.box.qtc(3.0).qa(2.0);
    assertEquals("qtc-unreachable", draft.faults().get(0).code());
  }

  @Test
  void aTuningIsRefusedHereAndADriverKnownBetterIsNot() {
    ClosedBoxDraft draft = hand();
    double level = draft.result().response().referenceLevelDbSpl();
    draft.driver.name("invented").qts(0.5).massG(2500.0).peakPowerW(500.0);
    assertEquals(level, draft.result().response().referenceLevelDbSpl(), 1e-12);
    draft.box.fbHz(35.0).qp(20.0);
    assertEquals(
        List.of("not-allowed /box/fb_hz", "not-allowed /box/qp"),
        draft.faults().stream().map(f -> f.code() + " " + f.pointer()).toList());
  }

  @Test
  void whatIsUndecidedIsRefusedAllAtOnce() {
    ClosedBoxDraft draft = hand();
    ClosedBoxRequest both =
        ClosedBoxRequestBuilder.builder()
            .driver(draft.driver.build())
            .box(BoxBuilder.builder().volumeL(10.0).qtc(0.7).build())
            .baffle(new LeakyBaffle(60.0, 1.0, null))
            .voltageV(1.0)
            .powerW(1.0)
            .cabin(
                CabinBuilder.builder()
                    .lengthM(2.0)
                    .transfer(List.of(new TransferPoint(80.0, 1.0), new TransferPoint(20.0, 2.0)))
                    .build())
            .build();
    List<String> pointers =
        Answers.faults(new ClosedBox(), both).stream().map(Fault::pointer).toList();
    // Box or baffle, the size of the box, the drive and the cabin are rules of the whole.
    assertEquals(List.of("/cabin/transfer/1/frequency_hz", "", "", "", ""), pointers);
  }

  @Test
  void aRangeThatRunsBackwardsIsRefused() {
    assertEquals("/frequencies/to_hz", hand().range(100, 50).faults().get(0).pointer());
  }

  @Test
  void theWorkingsTellHowTheQComesAbout() {
    List<Step> steps = Answers.withWorkings(new ClosedBox(), hand().request()).workings();
    assertTrue(steps.stream().anyMatch(s -> s.quantity().equals("qtc") && s.value() == 1));
    assertTrue(steps.stream().allMatch(s -> !s.source().isBlank()));
  }
}
