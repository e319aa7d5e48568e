package org.footwell.factory.sum;

import static org.footwell.factory.sum.SumBench.filter;
import static org.footwell.factory.sum.SumBench.output;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.factory.sum.SignalSumRequest.VehicleSound;
import org.footwell.factory.sum.SignalSumResult.Advice;
import org.footwell.parts.CurveFrequenciesBuilder;
import org.footwell.parts.Filter.Kind;
import org.footwell.recording.Recording;
import org.footwell.signal.SectionKind;
import org.junit.jupiter.api.Test;

class SignalSumTest {

  private static final Kind LR = Kind.LINKWITZ_RILEY;

  @Test
  void aLinkwitzRileyPairAddsUpFlat() {
    SumBench bench = SumBench.pair(2500);
    SignalSumResult result = bench.result();
    assertEquals(0, result.sum().spreadDb(), 1e-9);
    assertEquals(0, result.sum().medianDb(), 1e-9);
    assertTrue(result.sum().flatEnough());
    assertEquals(List.of("sum-flat"), bench.codes());
    assertEquals(result.sum(), result.best());
    assertTrue(result.holes().isEmpty() && result.overlaps().isEmpty());
    assertTrue(result.outputs().stream().noneMatch(Advice::turnPolarity));
  }

  @Test
  void oneOfThemTurnedOverMakesAHoleThatPolarityMends() {
    SumBench bench = new SumBench();
    bench.with(output("woofer").lowPass(filter(LR, 4, 2500)));
    bench.with(output("tweeter").highPass(filter(LR, 4, 2500)).polarity(-1));
    SignalSumResult result = bench.result();
    assertEquals(1, result.holes().size());
    assertEquals(2500, result.holes().get(0).worstHz(), 20);
    assertTrue(result.holes().get(0).levelDb() < -30);
    // Both at -6.02 dB: in phase they would add up to 0 dB.
    assertTrue(result.holes().get(0).phaseLossDb() > 30);
    assertEquals(0, result.best().spreadDb(), 1e-9);
    // The inverted one is put right, not the other inverted too.
    assertEquals(
        List.of(false, true), result.outputs().stream().map(Advice::turnPolarity).toList());
    assertEquals(List.of("sum-not-flat", "phases-cancel", "hole", "turn-polarity"), bench.codes());
  }

  @Test
  void aDelayIsUndone() {
    SumBench bench = new SumBench();
    bench.with(output("woofer").lowPass(filter(LR, 4, 2500)));
    bench.with(output("tweeter").highPass(filter(LR, 4, 2500)).delayMs(0.2));
    SignalSumResult result = bench.result();
    // Half a period at 2500 Hz is 0.2 ms: they cancel.
    assertTrue(result.sum().lowestDb() < -30);
    assertTrue(result.best().flatEnough());
    // Turning polarity is one change too, but an uneven one.
    assertEquals(0, result.best().spreadDb(), 1e-6);
    assertEquals(0.2, result.outputs().get(0).delayMs(), 1e-12);
    assertEquals(0, result.outputs().get(1).delayMs(), 1e-12);
    assertEquals(0.2, result.outputs().get(1).laterMs(), 1e-12);
    assertTrue(bench.codes().contains("undo-delay"));
  }

  @Test
  void anOutputThatOnlyDoublesTheOthersIsLeftOut() {
    SumBench bench = SumBench.pair(2500);
    bench.with(
        output("rear")
            .highPass(filter(Kind.BUTTERWORTH, 2, 200))
            .lowPass(filter(Kind.BUTTERWORTH, 2, 1000))
            .gainDb(3.0));
    SignalSumResult result = bench.result();
    assertFalse(result.sum().flatEnough());
    assertEquals(
        List.of(true, true, false), result.outputs().stream().map(Advice::connect).toList());
    assertEquals(0, result.best().spreadDb(), 1e-9);
    assertTrue(bench.codes().contains("leave-out"));
  }

  @Test
  void anAllPassHidesFromTheSumOfMagnitudes() {
    SumBench bench = new SumBench().with(output("left")).with(output("right"));
    bench.section("right", SectionKind.ALL_PASS_1, 1000, null, null);
    bench.draft.frequencies(
        CurveFrequenciesBuilder.builder().listHz(List.of(100.0, 1000.0, 10_000.0)).build());
    SignalSumResult result = bench.result();
    // At 1 kHz a right angle between two equal signals: √2 instead of 2.
    double db = 20 * Math.log10(Math.sqrt(2));
    assertEquals(
        -db, result.points().get(1).levelDb() - result.points().get(1).inPhaseLevelDb(), 1e-9);
    assertEquals(
        result.points().get(0).inPhaseLevelDb(), result.points().get(2).inPhaseLevelDb(), 1e-9);
    assertTrue(bench.codes().contains("all-pass-hidden"));
    assertEquals(1000, result.outputs().get(1).allPassHz());
    assertEquals(0, result.best().spreadDb(), 1e-9);
  }

  @Test
  void voltagesAddUpAndAreTold() {
    SumBench bench = new SumBench();
    bench.with(output("woofer").lowPass(filter(LR, 4, 2500)).cleanOutputV(6.0));
    bench.with(output("tweeter").highPass(filter(LR, 4, 2500)).cleanOutputV(6.0));
    SignalSumResult result = bench.result();
    assertEquals(6, result.summedV(), 1e-9);
    assertEquals(6, result.highestSummedV(), 1e-9);
    assertEquals(result.highestSummedV(), result.cleanOutputV());
    assertEquals(List.of("sum-flat"), bench.codes());
    SumBench twice =
        new SumBench()
            .with(output("left").cleanOutputV(6.0))
            .with(output("right").cleanOutputV(4.0).gainDb(-6.0206));
    assertEquals(8, twice.result().summedV(), 1e-4);
    assertTrue(twice.codes().contains("sum-voltage-above-single"));
  }

  @Test
  void soundsOfTheVehicleMustNotBeCutOff() {
    SumBench bench = SumBench.pair(2500);
    bench.with(output("centre").connected(false).carries(List.of(VehicleSound.PARKING_AID)));
    bench.with(output("sub").connected(false).carries(List.of(VehicleSound.NOISE_CANCELLING)));
    bench.with(output("rear").connected(false).carries(null));
    assertEquals(
        List.of(
            "vehicle-sound-not-in-sum",
            "vehicle-sound-not-in-sum",
            "noise-cancelling-disturbed",
            "vehicle-sounds-unknown",
            "sum-flat"),
        bench.codes());
    assertEquals(2, bench.answer().safety().size());
  }

  @Test
  void pointsAreAddedLikeTheFiltersTheyWereTakenFrom() {
    SumBench bench = new SumBench();
    bench.with(output("woofer")).with(output("tweeter").polarity(-1));
    var woofer = SumBench.pair(2500);
    for (double f = 20; f < 20_000; f *= 1.02) {
      for (int o = 0; o < 2; o++) {
        var h =
            OutputResponse.delayed(
                KnownOutputs.filters(woofer.outputs.get(o), woofer.request()).at(f), f, 1);
        String id = o == 0 ? "woofer" : "tweeter";
        bench.point(id, f, 20 * Math.log10(h.modulus()), h.phaseDeg());
      }
    }
    SignalSumResult result = bench.result();
    assertEquals(2500, result.holes().get(0).worstHz(), 20);
    assertEquals(0, result.best().spreadDb(), 0.05);
    assertEquals(0, result.outputs().get(0).laterMs(), 0.03);
    assertEquals(0, result.outputs().get(1).laterMs(), 0.03);
    assertTrue(result.outputs().stream().allMatch(one -> one.allPassHz() == null));
  }

  @Test
  void anAllPassInAMeasuredOutputIsFoundByItsExcessPhase() {
    SumBench made = new SumBench().with(output("a").highPass(filter(Kind.BUTTERWORTH, 2, 30)));
    made.section("a", SectionKind.ALL_PASS_2, 300, 0.7, null);
    SumBench bench = new SumBench().with(output("a"));
    for (double f = 20; f < 20_000; f *= 1.03) {
      var h =
          OutputResponse.delayed(
              KnownOutputs.filters(made.outputs.get(0), made.request()).at(f), f, 0.5);
      bench.point("a", f, 20 * Math.log10(h.modulus()), h.phaseDeg());
    }
    Advice advice = bench.result().outputs().get(0);
    assertEquals(300, advice.allPassHz(), 60);
    assertTrue(bench.codes().contains("all-pass-hidden"));
  }

  @Test
  void impulseResponsesAreTheThirdWay() {
    float[] early = new float[4800];
    float[] late = new float[4800];
    early[10] = 0.5f;
    late[34] = 0.5f;
    SumBench bench = new SumBench();
    bench.with(output("a").impulseResponse(Recording.of(48_000, early)));
    bench.with(output("b").impulseResponse(Recording.of(48_000, late)));
    SignalSumResult result = bench.result();
    // 24 samples apart: holes at 1, 3, 5 kHz and so on.
    assertEquals(1000, result.holes().get(0).worstHz(), 10);
    assertEquals(0.5, result.outputs().get(1).laterMs(), 1e-3);
    assertEquals(0.5, result.outputs().get(0).delayMs(), 1e-3);
    assertTrue(result.best().flatEnough());
  }

  @Test
  void coarsePhasesAndNarrowResponsesAreSaid() {
    SumBench bench = new SumBench().with(output("a"));
    for (int i = 0; i < 10; i++) {
      bench.point("a", 100 * Math.pow(2, i / 2.0), 0, 150 * i);
    }
    assertEquals(
        List.of("phase-too-coarse", "band-narrowed", "sum-flat"),
        bench.codes().stream().filter(code -> !code.equals("all-pass-hidden")).toList());
    bench.draft.flatFromHz(5000.0);
    assertEquals(List.of("/flat_from_hz band-outside-responses"), bench.faults());
  }

  @Test
  void nothingHelpsWhereABandIsMissing() {
    SumBench bench = new SumBench();
    bench
        .with(output("woofer").lowPass(filter(LR, 4, 200)))
        .with(output("tweeter").highPass(filter(LR, 4, 5000)));
    assertEquals(List.of("sum-not-flat", "sum-not-flat-at-best"), bench.codes().subList(0, 2));
    assertFalse(bench.result().best().flatEnough());
  }

  @Test
  void requestsThatCannotBeAreRefused() {
    SumBench bench = new SumBench();
    bench.with(output("a").highPass(filter(LR, 3, 100)).connected(false));
    bench.with(output("b").lowPass(filter(Kind.BESSEL, 2, 30_000)).connected(false));
    bench.section("b", SectionKind.PEAK, 25_000, null, 3.0);
    bench.section("a", SectionKind.NOTCH, 1000, 3.0, 3.0);
    bench.point("a", 100, 0, 0).point("a", 50, 0, 0);
    assertEquals(
        List.of(
            "/sections/0/q required",
            "/sections/1/gain_db section-without-such",
            "/outputs/0/high_pass/order linkwitz-riley-odd",
            "/outputs/1/low_pass/frequency_hz above-half-rate",
            "/sections/0/frequency_hz above-half-rate",
            "/outputs/0 response-given-twice",
            "/outputs no-output-in-sum",
            "/points/1/frequency_hz not-ascending",
            "/points too-few-points"),
        bench.faults());
  }

  @Test
  void whatContradictsItselfIsToldAtOnceWithWhatIsOutOfBounds() {
    SumBench bench = new SumBench();
    bench.with(output("a").polarity(0).cleanOutputV(4.0)).with(output("a"));
    bench.section("b", SectionKind.PEAK, 0.5, 1.0, 3.0);
    bench.point("a", 100, 0, 0).point("a", 100, 0, 0).point("c", 50, 0, 0);
    bench.draft.flatFromHz(300.0).flatToHz(200.0);
    assertEquals(
        List.of(
            "/outputs/0/polarity not-allowed",
            "/sections/0/frequency_hz not-allowed",
            "/outputs/1/clean_output_v needed-beside",
            "/outputs/1/id duplicate",
            "/points/1/channel duplicate",
            "/sections/0/channel dangling-reference",
            "/points/2/channel dangling-reference",
            "/flat_to_hz not-ascending",
            "/points too-few-points",
            "/points too-few-points"),
        bench.faults());
  }

  /** A band reaches as far as crossover-filters takes one; what the rate cannot hold is cut off. */
  @Test
  void aBandFromOneHertzToFarAboveTheRateIsJudged() {
    SumBench bench = SumBench.pair(2500);
    bench.draft.flatFromHz(1.0).flatToHz(100_000.0);
    SignalSumResult result = bench.result();
    assertTrue(result.sum().flatEnough());
    assertEquals(List.of(1.0, 21_600.0), List.of(result.sum().fromHz(), result.sum().toHz()));
    assertTrue(bench.codes().contains("band-narrowed"));
  }

  @Test
  void aSumThatCancelsIsRefused() {
    SumBench bench = new SumBench().with(output("a")).with(output("b").polarity(-1));
    assertEquals(List.of("/outputs sum-silent"), bench.faults());
  }

  @Test
  void curvesEndBelowHalfTheRate() {
    SumBench bench = SumBench.pair(2500);
    bench.draft.frequencies(CurveFrequenciesBuilder.builder().fromHz(20.0).toHz(30_000.0).build());
    assertEquals(List.of("/frequencies/to_hz above-half-rate"), bench.faults());
  }
}
