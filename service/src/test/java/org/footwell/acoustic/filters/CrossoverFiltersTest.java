package org.footwell.acoustic.filters;

import static org.footwell.acoustic.filters.FilteredWays.filter;
import static org.footwell.acoustic.filters.FilteredWays.high;
import static org.footwell.acoustic.filters.FilteredWays.low;
import static org.footwell.acoustic.filters.FilteredWays.way;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Listening;
import org.footwell.acoustic.filters.CrossoverFiltersResult.Better;
import org.footwell.acoustic.filters.CrossoverFiltersResult.Handover;
import org.footwell.acoustic.filters.CrossoverFiltersResult.WayPoint;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Verdict;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Filter.Kind;
import org.footwell.signal.Biquad;
import org.footwell.signal.CoefficientFormat;
import org.footwell.signal.SectionKind;
import org.junit.jupiter.api.Test;

class CrossoverFiltersTest {

  @Test
  void linkwitzRileyOfOrdersFourAndEightSumsFlatAsItIs() {
    for (int order : new int[] {4, 8}) {
      Answer<CrossoverFiltersResult> answer =
          FilteredWays.pair(Kind.LINKWITZ_RILEY, order, 2000, 1).answer();
      assertEquals(0, answer.result().sum().highestDb(), 1e-9);
      assertEquals(0, answer.result().sum().lowestDb(), 1e-9);
      Handover handover = answer.result().handovers().get(0);
      assertEquals(2000, handover.crossingHz(), 1e-3);
      assertEquals(-6.0206, handover.eachDb(), 1e-4);
      assertEquals(0, handover.phaseDifferenceDeg(), 1e-6);
      assertEquals(0, handover.sumDb(), 1e-6);
      assertEquals(Better.AS_GIVEN, handover.better());
      assertEquals(0, handover.bestDelayMs());
      assertEquals(Verdict.OK, answer.verdict());
    }
  }

  @Test
  void linkwitzRileyOfOrdersTwoAndSixNeedsOneWayInverted() {
    for (int order : new int[] {2, 6}) {
      Answer<CrossoverFiltersResult> wrong =
          FilteredWays.pair(Kind.LINKWITZ_RILEY, order, 2000, 1).answer();
      assertEquals(List.of("polarity-sums-better", "sum-uneven"), Answers.codes(wrong));
      assertEquals("/ways/1/polarity", wrong.findings().get(0).pointer());
      assertEquals(Better.INVERTED, wrong.result().handovers().get(0).better());
      assertEquals(60, wrong.result().handovers().get(0).spreadDb(), 1e-9);
      assertEquals(0, wrong.result().handovers().get(0).invertedSpreadDb(), 1e-9);
      assertEquals(2000, wrong.result().sum().lowestHz(), 1);
      assertEquals(0, wrong.result().sum().inverted().get(1).spreadDb(), 1e-9);
      Answer<CrossoverFiltersResult> right =
          FilteredWays.pair(Kind.LINKWITZ_RILEY, order, 2000, -1).answer();
      assertEquals(Verdict.OK, right.verdict());
      assertEquals(0, right.result().sum().spreadDb(), 1e-9);
    }
  }

  @Test
  void oddButterworthPairsSumFlatInEitherPolarity() {
    for (int order : new int[] {1, 3, 5, 7}) {
      Handover handover =
          FilteredWays.pair(Kind.BUTTERWORTH, order, 2000, 1).result().handovers().get(0);
      assertEquals(Better.EITHER, handover.better());
      assertEquals(0, handover.spreadDb(), 1e-8);
      assertEquals(0, handover.invertedSpreadDb(), 1e-8);
      assertEquals(90, Math.abs(handover.phaseDifferenceDeg()), 1e-6);
      assertEquals(0, handover.bestDelayMs());
    }
  }

  @Test
  void evenButterworthPairsRiseThreeDbAtTheCrossingAtBest() {
    CrossoverFiltersResult fourth = FilteredWays.pair(Kind.BUTTERWORTH, 4, 2000, 1).result();
    assertEquals(3.0103, fourth.sum().highestDb(), 1e-4);
    assertEquals(2000, fourth.sum().highestHz(), 1);
    assertEquals(3.0103, fourth.handovers().get(0).sumDb(), 1e-4);
  }

  @Test
  void levelPhaseAndDelayOfAWayCarryItsGainPolarityAndDelay() {
    FilteredWays draft =
        new FilteredWays()
            .with(low("sub", Kind.LINKWITZ_RILEY, 4, 80).gainDb(-6.0).delayMs(2.0).polarity(-1))
            .at(1.0, 80.0);
    CrossoverFiltersResult result = draft.result();
    WayPoint atCorner = result.ways().get(0).points().get(1);
    assertEquals(-12.0206, atCorner.levelDb(), 1e-4);
    // −180 of the filter, 180 inverted, 80 Hz · 2 ms · 360 late.
    assertEquals(-57.6, atCorner.phaseDeg(), 1e-6);
    // Far below, an 80 Hz fourth-order low-pass costs 5.63 ms: 2·√2·1000/(2π·80).
    assertEquals(2 + 5.627, result.ways().get(0).points().get(0).groupDelayMs(), 2e-3);
    assertEquals(96, result.ways().get(0).delaySamples(), 1e-12);
    assertNull(result.sum().inverted());
    assertEquals(List.of(), result.handovers());
  }

  @Test
  void aLateWayIsFoundAndTheDelayThatMendsItNamed() {
    FilteredWays draft =
        new FilteredWays()
            .with(low("lower", Kind.LINKWITZ_RILEY, 4, 2000))
            .with(high("upper", Kind.LINKWITZ_RILEY, 4, 2000).delayMs(0.15));
    Answer<CrossoverFiltersResult> answer = draft.answer();
    Handover handover = answer.result().handovers().get(0);
    assertEquals(-108, handover.phaseDifferenceDeg(), 1e-3);
    assertEquals(-0.15, handover.bestDelayMs(), 1e-4);
    assertEquals(1, handover.bestPolarity());
    assertEquals(0, handover.bestSpreadDb(), 1e-3);
    Finding finding =
        answer.findings().stream()
            .filter(f -> f.code().equals("delay-sums-better"))
            .findFirst()
            .orElseThrow();
    assertTrue(finding.inFull().startsWith("Delaying lower by 0.15 ms more would bring"));
  }

  @Test
  void aGainThatMakesUpForADriverDoesNotBlurHowThePhasesFit() {
    FilteredWays draft =
        new FilteredWays()
            .with(low("lower", Kind.LINKWITZ_RILEY, 4, 2000))
            .with(high("upper", Kind.LINKWITZ_RILEY, 4, 2000).gainDb(-6.0));
    Answer<CrossoverFiltersResult> answer = draft.answer();
    assertEquals(List.of("sum-shaped"), Answers.codes(answer));
    assertEquals(6, answer.result().sum().spreadDb(), 0.01);
    assertEquals(0, answer.result().handovers().get(0).spreadDb(), 1e-9);
    assertEquals(Better.AS_GIVEN, answer.result().handovers().get(0).better());
    assertTrue(answer.result().handovers().get(0).crossingHz() > 2200);
  }

  @Test
  void atHalfAWavelengthApartTheWaysCancelButForTheirDistance() {
    // 0.8 and 1.0 m away: 0.2 m is half a wavelength at 858 Hz; levels 1 and 0.8 of a half each.
    FilteredWays draft =
        new FilteredWays()
            .with(low("lower", Kind.LINKWITZ_RILEY, 4, 858))
            .with(high("upper", Kind.LINKWITZ_RILEY, 4, 858).heightM(0.6))
            .at(858.0);
    draft.asked.listening(new Listening(0.8, List.of(0.3, 0.6), null));
    Answer<CrossoverFiltersResult> answer = draft.answer();
    CrossoverFiltersResult result = answer.result();
    assertEquals(-20, result.sum().points().get(0).levelDb(), 1e-3);
    // At 0.3 m both are equally far: √(0.8² + 0.3²) = 0.8544 m, −0.571 dB.
    assertEquals(-0.5715, result.heights().get(0).points().get(0).levelDb(), 1e-3);
    assertEquals(20.556, result.heights().get(0).angleDeg(), 1e-3);
    assertEquals(-20, result.heights().get(1).points().get(0).levelDb(), 1e-3);
    assertTrue(Answers.codes(answer).contains("point-sources-assumed"));
  }

  @Test
  void theNearerWayIsToBeDelayedByTheDifferenceOfThePaths() {
    FilteredWays draft =
        new FilteredWays()
            .with(low("woofer", Kind.LINKWITZ_RILEY, 4, 2500).heightM(-0.15))
            .with(high("tweeter", Kind.LINKWITZ_RILEY, 4, 2500).gainDb(-1.5));
    draft.asked.listening(new Listening(0.9, null, null));
    Handover handover = draft.result().handovers().get(0);
    // √(0.9² + 0.15²) − 0.9 = 0.01241 m: 0.0362 ms.
    assertEquals(0.0362, handover.bestDelayMs(), 1e-4);
    assertEquals(1, handover.bestPolarity());
    assertEquals(0, handover.bestSpreadDb(), 1e-4);
    assertNull(draft.result().heights());
  }

  @Test
  void aHoleAboveTheListenerIsFound() {
    FilteredWays draft =
        new FilteredWays()
            .with(low("lower", Kind.LINKWITZ_RILEY, 4, 2000).heightM(-0.1))
            .with(high("upper", Kind.LINKWITZ_RILEY, 4, 2000).heightM(0.1));
    draft.asked.listening(new Listening(1.0, List.of(0.0, 0.47), null));
    Answer<CrossoverFiltersResult> answer = draft.answer();
    // Reference height: equal paths, flat as alone but for √1.01 m of distance.
    assertEquals(-0.0432, answer.result().sum().points().get(0).levelDb(), 1e-4);
    assertEquals(0, answer.result().sum().spreadDb(), 1e-6);
    assertEquals(0, answer.result().heights().get(0).lossDb(), 1e-9);
    assertTrue(answer.result().heights().get(1).lossDb() < -20);
    Finding finding = answer.findings().get(0);
    assertEquals("level-falls-at-height", finding.code());
    assertEquals("/listening/heights_m/1", finding.pointer());
  }

  @Test
  void placesOfTheWaysNeedAListener() {
    FilteredWays draft =
        new FilteredWays().with(low("woofer", Kind.BUTTERWORTH, 2, 300).heightM(0.2));
    assertEquals(List.of("heights-without-listener"), Answers.codes(draft.answer()));
  }

  @Test
  void inSinglePrecisionTwentyHertzAtTheHighestRateIsOffByMoreThanHalfADecibel() {
    FilteredWays draft =
        new FilteredWays().with(high("sub", Kind.BUTTERWORTH, 2, 20)).at(10.0, 20.0);
    draft
        .asked
        .rateHz(192000.0)
        .frequencies(new CurveFrequencies(null, 10.0, 20000.0, List.of(10.0, 20.0)))
        .coefficientFormat(new CoefficientFormat(CoefficientFormat.Kind.FLOAT32, null, null));
    Answer<CrossoverFiltersResult> answer = draft.answer();
    assertEquals(List.of("rounding-changes-level"), Answers.codes(answer));
    assertEquals(-0.69, answer.result().ways().get(0).roundingErrorDb(), 0.01);
    WayPoint ten = answer.result().ways().get(0).points().get(0);
    assertEquals(-0.6916, ten.roundedLevelDb() - ten.levelDb(), 1e-3);
    draft.asked.coefficientFormat(null);
    assertEquals(Verdict.OK, draft.answer().verdict());
    assertNull(draft.result().ways().get(0).roundingErrorDb());
    assertNull(draft.result().sections().get(0).rounded());
  }

  @Test
  void roundingIsJudgedDownToZeroAndAtPointsOutsideOfTheRange() {
    FilteredWays draft = new FilteredWays().with(low("sub", Kind.LINKWITZ_RILEY, 4, 20));
    draft
        .asked
        .rateHz(192000.0)
        .coefficientFormat(new CoefficientFormat(CoefficientFormat.Kind.FLOAT32, null, null));
    CrossoverFiltersResult.WayCurve way = draft.result().ways().get(0);
    assertEquals(0, way.roundingErrorHz());
    // At zero frequency a section is (b0 + b1 + b2)/(1 + a1 + a2), of coefficients held as floats.
    Biquad rounded = draft.result().sections().get(0).rounded();
    double zero = (rounded.b0() + rounded.b1() + rounded.b2()) / (1 + rounded.a1() + rounded.a2());
    assertEquals(2 * 20 * Math.log10(zero), way.roundingErrorDb(), 1e-6);
    assertEquals(-1.87, way.roundingErrorDb(), 0.01);
    draft.asked.frequencies(new CurveFrequencies(null, 20.0, 20000.0, List.of(5.0)));
    CrossoverFiltersResult.WayPoint listed = draft.result().ways().get(0).points().get(0);
    assertTrue(
        Math.abs(listed.roundedLevelDb() - listed.levelDb())
            <= Math.abs(draft.result().ways().get(0).roundingErrorDb()));
  }

  @Test
  void aWordThatIsTooCoarseMakesALowHighPassUnstable() {
    // 1 + a1 + a2 is 6.8e-6 and the step of the word 6.1e-5: a pole comes to lie on the circle.
    FilteredWays draft =
        new FilteredWays().with(high("sub", Kind.BUTTERWORTH, 2, 20)).fixed(16, 14);
    Answer<CrossoverFiltersResult> answer = draft.answer();
    assertEquals(Verdict.STOP, answer.verdict());
    Finding finding = answer.findings().get(0);
    assertEquals("rounded-unstable", finding.code());
    assertEquals("/ways/0/high_pass", finding.pointer());
    assertNull(answer.result().ways().get(0).roundingErrorDb());
    assertNull(answer.result().ways().get(0).points().get(0).roundedLevelDb());
    assertNotNull(answer.result().sections().get(0).roundedPoleRadius());
    assertTrue(answer.result().sections().get(0).poleRadius() < 1);
  }

  @Test
  void aLowPassWhoseInputCoefficientsVanishLetsNothingThrough() {
    // b1 is 2.1e-7 and half a step of the word 4.8e-7.
    FilteredWays draft = new FilteredWays().with(low("sub", Kind.BUTTERWORTH, 2, 20)).fixed(24, 20);
    draft.asked.rateHz(192000.0);
    Answer<CrossoverFiltersResult> answer = draft.answer();
    assertTrue(Answers.codes(answer).contains("section-rounded-away"));
    assertFalse(Answers.codes(answer).contains("rounding-changes-level"));
  }

  @Test
  void aCoefficientBeyondTheWordIsAStop() {
    FilteredWays draft =
        new FilteredWays()
            .with(high("tweeter", Kind.LINKWITZ_RILEY, 4, 3000))
            .with("tweeter", SectionKind.HIGH_SHELF, 2000, 0.5, 10.0)
            .fixed(24, 22);
    Answer<CrossoverFiltersResult> answer = draft.answer();
    Finding finding = answer.findings().get(0);
    assertEquals("coefficient-out-of-range", finding.code());
    assertEquals("/sections/0", finding.pointer());
    assertEquals(-4.532, finding.value(), 1e-3);
    assertEquals(2, finding.limit(), 1e-6);
  }

  @Test
  void sectionsComeInTheOrderOfTheSignalAndSayWhereTheyAreFrom() {
    FilteredWays draft =
        new FilteredWays()
            .with(
                high("mid", Kind.BUTTERWORTH, 3, 200).lowPass(filter(Kind.LINKWITZ_RILEY, 4, 3000)))
            .with("mid", SectionKind.ALL_PASS_1, 500, null, null)
            .with("mid", SectionKind.PEAK, 800, 2.0, -3.0);
    assertEquals(
        List.of(
            "/ways/0/high_pass",
            "/ways/0/high_pass",
            "/ways/0/low_pass",
            "/ways/0/low_pass",
            "/sections/0",
            "/sections/1"),
        draft.result().sections().stream().map(s -> s.pointer()).toList());
  }

  @Test
  void theBandJudgedKeepsClearOfTheOuterCornersUnlessStated() {
    FilteredWays draft =
        new FilteredWays()
            .with(
                high("woofer", Kind.BUTTERWORTH, 4, 60).lowPass(filter(Kind.BUTTERWORTH, 3, 2000)))
            .with(high("tweeter", Kind.BUTTERWORTH, 3, 2000));
    assertEquals(120, draft.result().sum().bandFromHz());
    assertEquals(20000, draft.result().sum().bandToHz());
    draft.asked.flatFromHz(60.0).flatToHz(4000.0);
    assertEquals(60, draft.result().sum().bandFromHz());
    assertEquals(4000, draft.result().sum().bandToHz());
    assertEquals(-3.01, draft.result().sum().lowestDb(), 0.01);
  }

  @Test
  void everyWayIsPairedWithItsNeighbourOnly() {
    FilteredWays draft =
        new FilteredWays()
            .with(low("sub", Kind.LINKWITZ_RILEY, 4, 80))
            .with(
                high("left", Kind.LINKWITZ_RILEY, 4, 80)
                    .lowPass(filter(Kind.LINKWITZ_RILEY, 4, 2500)))
            .with(
                high("right", Kind.LINKWITZ_RILEY, 4, 80)
                    .lowPass(filter(Kind.LINKWITZ_RILEY, 4, 2500)))
            .with(high("tweeter", Kind.LINKWITZ_RILEY, 4, 2500));
    assertEquals(
        List.of("sub-left", "sub-right", "left-tweeter", "right-tweeter"),
        draft.result().handovers().stream().map(h -> h.lower() + "-" + h.upper()).toList());
  }

  @Test
  void ofThreeWaysOnlyNeighboursHandOver() {
    FilteredWays draft =
        new FilteredWays()
            .with(low("woofer", Kind.LINKWITZ_RILEY, 4, 300))
            .with(
                high("middle", Kind.LINKWITZ_RILEY, 4, 300)
                    .lowPass(filter(Kind.LINKWITZ_RILEY, 4, 1200)))
            .with(high("tweeter", Kind.LINKWITZ_RILEY, 4, 1200));
    assertEquals(
        List.of("woofer-middle", "middle-tweeter"),
        draft.result().handovers().stream().map(h -> h.lower() + "-" + h.upper()).toList());
    assertEquals(Verdict.OK, draft.answer().verdict());
  }

  @Test
  void bandPassesThatHardlyDifferDoNotHandOverToEachOther() {
    FilteredWays draft =
        new FilteredWays()
            .with(
                high("left", Kind.LINKWITZ_RILEY, 4, 1000)
                    .lowPass(filter(Kind.LINKWITZ_RILEY, 4, 2500)))
            .with(
                high("right", Kind.LINKWITZ_RILEY, 4, 1100)
                    .lowPass(filter(Kind.LINKWITZ_RILEY, 4, 2600)));
    assertEquals(List.of(), draft.result().handovers());
  }

  @Test
  void aCrossingThatAThirdWayDrownsIsNotJudged() {
    FilteredWays draft =
        FilteredWays.pair(Kind.LINKWITZ_RILEY, 2, 1000, 1).with(way("full").gainDb(1.0));
    assertEquals(List.of(), draft.result().handovers());
    FilteredWays softer =
        FilteredWays.pair(Kind.LINKWITZ_RILEY, 2, 1000, 1).with(way("full").gainDb(-1.0));
    assertEquals(1, softer.result().handovers().size());
  }

  @Test
  void allAdviceOnThreeWaysTogetherMakesTheWholeSumFlat() {
    FilteredWays draft =
        new FilteredWays()
            .with(low("woofer", Kind.LINKWITZ_RILEY, 2, 200))
            .with(
                high("middle", Kind.LINKWITZ_RILEY, 2, 200)
                    .lowPass(filter(Kind.LINKWITZ_RILEY, 2, 4000)))
            .with(high("tweeter", Kind.LINKWITZ_RILEY, 2, 4000));
    List<Finding> advice =
        draft.answer().findings().stream()
            .filter(f -> f.code().equals("polarity-sums-better"))
            .toList();
    assertEquals(
        List.of("/ways/0/polarity", "/ways/2/polarity"),
        advice.stream().map(Finding::pointer).toList());
    assertTrue(advice.get(0).text().contains("with the polarity of woofer changed"));
    FilteredWays followed =
        new FilteredWays()
            .with(low("woofer", Kind.LINKWITZ_RILEY, 2, 200).polarity(-1))
            .with(
                high("middle", Kind.LINKWITZ_RILEY, 2, 200)
                    .lowPass(filter(Kind.LINKWITZ_RILEY, 2, 4000)))
            .with(high("tweeter", Kind.LINKWITZ_RILEY, 2, 4000).polarity(-1));
    assertTrue(followed.result().sum().spreadDb() < 1);
  }

  @Test
  void adviceThatWouldMakeTheWholeSumLessFlatIsNotGiven() {
    // Right and left alone would sum with the sub once one side is inverted; both sides cancel
    // then.
    FilteredWays draft =
        new FilteredWays()
            .with(low("sub", Kind.LINKWITZ_RILEY, 2, 80))
            .with(high("left", Kind.LINKWITZ_RILEY, 2, 80))
            .with(high("right", Kind.LINKWITZ_RILEY, 2, 80).polarity(-1));
    Answer<CrossoverFiltersResult> answer = draft.answer();
    assertEquals(Better.INVERTED, answer.result().handovers().get(0).better());
    assertFalse(Answers.codes(answer).contains("polarity-sums-better"));
  }

  @Test
  void aLateSteepWayIsToBeDelayedAndNotInverted() {
    // 5 ms are 0.4 periods of 80 Hz and 10 of 2000 Hz.
    for (double corner : new double[] {80, 2000}) {
      FilteredWays draft =
          new FilteredWays()
              .with(low("lower", Kind.LINKWITZ_RILEY, 8, corner))
              .with(high("upper", Kind.LINKWITZ_RILEY, 8, corner).delayMs(5.0));
      Answer<CrossoverFiltersResult> answer = draft.answer();
      assertEquals(
          List.of("delay-sums-better", "sum-uneven"),
          Answers.codes(answer).stream().sorted().toList());
      assertEquals(-5, answer.result().handovers().get(0).bestDelayMs(), 1e-3);
      assertEquals(1, answer.result().handovers().get(0).bestPolarity());
      assertEquals("/ways/0/delay_ms", answer.findings().get(0).pointer());
    }
  }

  @Test
  void aDelayThatGainsLessThanADecibelIsNotAdvised() {
    Answer<CrossoverFiltersResult> answer =
        FilteredWays.pair(Kind.BUTTERWORTH, 4, 2000, -1).answer();
    Handover handover = answer.result().handovers().get(0);
    assertTrue(handover.bestSpreadDb() < handover.invertedSpreadDb() - 0.3);
    assertEquals(List.of("polarity-sums-better", "sum-uneven"), Answers.codes(answer));
  }

  @Test
  void aNullIsEquallyDeepWhereverItIsShown() {
    CrossoverFiltersResult result =
        FilteredWays.pair(Kind.LINKWITZ_RILEY, 2, 2000, 1).at(2000.0).result();
    assertEquals(-60, result.handovers().get(0).sumDb(), 1e-6);
    assertEquals(-60, result.sum().points().get(0).levelDb(), 1e-6);
    assertEquals(-60, result.sum().lowestDb(), 1e-3);
  }

  @Test
  void waysThatNeverMeetAreSaidToBeSo() {
    FilteredWays draft =
        new FilteredWays()
            .with(low("lower", Kind.BUTTERWORTH, 1, 1000).gainDb(30.0))
            .with(high("upper", Kind.BUTTERWORTH, 1, 1000).gainDb(-60.0));
    Answer<CrossoverFiltersResult> answer = draft.answer();
    assertTrue(Answers.codes(answer).contains("no-crossing"));
    assertTrue(Answers.codes(answer).contains("full-scale-exceeded"));
    assertEquals(List.of(), answer.result().handovers());
  }

  @Test
  void aClosedBandPassAndACornerNearHalfTheRateAreRemarkedOn() {
    FilteredWays draft =
        new FilteredWays()
            .with(high("mid", Kind.BUTTERWORTH, 2, 3000).lowPass(filter(Kind.BUTTERWORTH, 2, 300)))
            .with(high("air", Kind.BUTTERWORTH, 2, 13000));
    List<String> codes = Answers.codes(draft.answer());
    assertTrue(codes.contains("band-pass-closed"));
    assertTrue(codes.contains("near-half-rate"));
  }

  @Test
  void workingsShowThePrewarping() {
    FilteredWays draft =
        new FilteredWays().with(low("low", Kind.LINKWITZ_RILEY, 2, 1000)).at(1000.0);
    Answer<CrossoverFiltersResult> answer =
        Answers.withWorkings(new CrossoverFilters(), draft.request());
    assertEquals("prewarped_ratio", answer.workings().get(0).quantity());
    assertEquals(0.0655435, answer.workings().get(0).value(), 5e-8);
    assertEquals(-6.0206, answer.result().ways().get(0).points().get(0).levelDb(), 1e-4);
  }

  @Test
  void twoEqualWaysOfOppositePolarityLeaveNothingAndNoDelayOfIt() {
    FilteredWays draft =
        new FilteredWays()
            .with(low("one", Kind.BUTTERWORTH, 2, 500))
            .with(low("other", Kind.BUTTERWORTH, 2, 500).polarity(-1))
            .at(100.0);
    CrossoverFiltersResult result = draft.result();
    // In phase each 0 dB would make 6.02 dB; a null is no deeper than 60 dB below that.
    assertEquals(-53.98, result.sum().points().get(0).levelDb(), 0.02);
    assertNull(result.sum().points().get(0).groupDelayMs());
  }
}
