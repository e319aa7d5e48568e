package org.footwell.factory.clip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.factory.clip.ClipPointRequest.OutputLoad;
import org.footwell.factory.clip.ClipPointRequest.Reading;
import org.footwell.factory.clip.ClipPointResult.Clipping;
import org.footwell.factory.clip.ClipPointResult.StepFigures;
import org.footwell.recording.Recording;
import org.junit.jupiter.api.Test;

class ClipPointTest {

  /** Harmonics of a sine of amplitude 1 held at c = sin a: the closed Fourier series. */
  private static double series(int n, double c) {
    double a = Math.asin(c);
    if (n == 1) {
      return 2 / Math.PI * (a + Math.sin(a) * Math.cos(a));
    }
    double three =
        Math.sin((n - 1) * a) / (n - 1)
            - Math.sin((n + 1) * a) / (n + 1)
            + 2 * Math.sin(a) * Math.cos(n * a) / n;
    return 2 / Math.PI * three;
  }

  @Test
  void aSineHeldAtHalfItsHeightHasTheThirdHarmonicOfItsSeries() {
    StepFigures step = new ToneBench().step(1, 0.8, 0.4, 0.4).first();
    // √3/(4π) over 1/3 + √3/(2π): 22.63 %.
    double third = Math.sqrt(3) / (4 * Math.PI) / (1 / 3.0 + Math.sqrt(3) / (2 * Math.PI));
    assertEquals(100 * third, step.thirdPercent(), 1e-3);
    assertEquals(22.63, step.thirdPercent(), 0.005);
    assertEquals(100 * series(3, 0.5) / series(1, 0.5), step.thirdPercent(), 1e-3);
    assertEquals(0, step.evenPercent(), 1e-3);
    assertEquals(ToneBench.TONE_HZ, step.toneHz(), 1e-6);
    assertEquals(19, step.harmonicCount());
    assertEquals(20 * Math.log10(0.8 * series(1, 0.5)), step.recordedLevelDb(), 1e-4);
  }

  @Test
  void allHarmonicsTogetherObeyParseval() {
    ToneBench bench = new ToneBench();
    bench.draft.bandEdgeHz(23_000.0);
    StepFigures step = bench.step(1, 0.8, 0.4, 0.4).first();
    double a = Math.asin(0.5);
    // Mean square of the held sine less that of its fundamental, but for what lies above the band.
    double mean = (a - Math.sin(2 * a) / 2) / Math.PI + 0.25 * (1 - 2 * a / Math.PI);
    double one = series(1, 0.5) * series(1, 0.5) / 2;
    assertEquals(100 * Math.sqrt((mean - one) / one), step.distortionPercent(), 1e-3);
  }

  @Test
  void aCleanSineHasNoDistortionAtAnyFrequency() {
    for (double tone : new double[] {40, 97.3, 333.333, 1000, 1234.567}) {
      ToneBench bench = new ToneBench();
      bench.toneMadeHz = tone;
      bench.draft.bandEdgeHz(20_000.0);
      StepFigures step = bench.step(1, 0.9, 1, 1).first();
      assertEquals(0, step.distortionPercent(), 0.001, tone + " Hz");
      assertEquals(tone, step.toneHz(), 1e-4);
    }
  }

  @Test
  void theHighestCleanStepAndItsVoltageFollow() {
    ToneBench bench = new ToneBench();
    bench
        .draft
        .fullScaleV(2.0)
        .probeRatio(10.0)
        .toneDbfs(0.0)
        .terminals(OutputLoad.LOADED)
        .loadOhm(4.0);
    bench.step(22, 0.6, 0.5, 0.5).step(20, 0.4, 0.5, 0.5).step(21, 0.49, 0.5, 0.5);
    ClipPointResult result = bench.result();
    assertEquals(List.of(), bench.codes());
    assertEquals(21, result.cleanStep());
    assertEquals(22, result.uncleanStep());
    // 0.49·20 V peak: 6.930 V RMS, 12.005 W into 4 ohm.
    assertEquals(9.8 / Math.sqrt(2), result.cleanOutputV(), 1e-5);
    assertEquals(12.005, result.cleanPowerW(), 1e-4);
    assertEquals(Clipping.SYMMETRIC, result.clipping());
    assertEquals(21, result.fullScaleStep());
    assertEquals(result.cleanOutputV(), result.inputSensitivityV(), 1e-12);
    assertEquals(20 * Math.log10(0.49 / 0.4), result.steps().get(1).riseDb(), 1e-5);
    assertNull(result.steps().get(0).riseDb());
  }

  @Test
  void aToneBelowFullScaleGivesTheStepWhereFullScaleWouldBeClean() {
    ToneBench bench = new ToneBench();
    bench.draft.fullScaleV(10.0).toneDbfs(-6.0);
    bench.step(20, 0.2, 0.5, 0.5).step(21, 0.28, 0.5, 0.5).step(22, 0.49, 0.5, 0.5);
    bench.step(23, 0.7, 0.5, 0.5);
    ClipPointResult result = bench.result();
    assertEquals(22, result.cleanStep());
    // 0.28·1.995 would pass 0.49, 0.2·1.995 does not: 2·1.9953/√2 V.
    assertEquals(20, result.fullScaleStep());
    assertEquals(2 / Math.sqrt(2) * Math.pow(10, 0.3), result.inputSensitivityV(), 1e-5);
    assertEquals(List.of("full-scale-calculated"), bench.codes());
    bench.draft.toneDbfs(-30.0);
    assertEquals(List.of("full-scale-never-clean"), bench.codes());
  }

  @Test
  void oneHalfClippingFirstIsToldFromBoth() {
    ToneBench bench = new ToneBench().step(1, 0.4, 0.5, 0.5).step(2, 0.6, 0.6, 0.5);
    bench.draft.fullScaleV(1.0);
    assertEquals(Clipping.ASYMMETRIC, bench.result().clipping());
    assertEquals(List.of("clipping-asymmetric"), bench.codes());
  }

  @Test
  void readingsAreTheOtherWayIn() {
    ToneBench bench = new ToneBench();
    bench.draft.toneDbfs(0.0).bandEdgeHz(null);
    bench.reading(28, 0.05, 5.0).reading(30, 0.2, 6.3).reading(32, 3.0, 7.4);
    ClipPointResult result = bench.result();
    assertEquals(30, result.cleanStep());
    assertEquals(6.3, result.inputSensitivityV());
    assertEquals(Clipping.UNKNOWN, result.clipping());
    assertEquals(List.of("steps-skipped"), bench.codes());
    bench.readings.set(2, new Reading(32, 3.0, 7.4, 10.0, 9.0));
    assertEquals(Clipping.ASYMMETRIC, bench.result().clipping());
    bench.readings.set(2, new Reading(32, 3.0, 7.4, 10.0, 9.8));
    assertEquals(Clipping.SYMMETRIC, bench.result().clipping());
    bench.draft.limitPercent(0.1);
    assertEquals(28, bench.result().cleanStep());
  }

  @Test
  void theFirstRowOfCleanStepsCounts() {
    ToneBench bench = new ToneBench();
    bench.reading(1, 4, 0.1).reading(2, 0.5, 0.2).reading(3, 2, 0.4).reading(4, 0.9, 0.8);
    assertEquals(2, bench.result().cleanStep());
    assertEquals(List.of("clean-again-above", "low-steps-unclean"), bench.codes());
  }

  @Test
  void neverCleanAndNeverClippedAreSaid() {
    ToneBench dirty = new ToneBench().reading(1, 4, 0.1).reading(2, 3, 0.2);
    assertEquals(List.of("no-clean-step"), dirty.codes());
    assertNull(dirty.result().cleanStep());
    assertEquals(1, dirty.result().uncleanStep());
    ToneBench clean = new ToneBench().reading(1, 0.1, 0.1).reading(2, 0.2, 0.2);
    assertEquals(List.of("clipping-not-reached"), clean.codes());
    assertNull(clean.result().uncleanStep());
  }

  @Test
  void aLimiterThatHoldsTheLevelBackIsFound() {
    ToneBench bench = new ToneBench();
    bench.reading(1, 0.1, 1.0).reading(2, 0.1, 1.26).reading(3, 0.1, 1.28).reading(4, 2, 1.3);
    assertEquals(List.of("level-stops-rising"), bench.codes());
  }

  @Test
  void fallingLevelsUnsteadyTonesAndOtherTonesAreFound() {
    ToneBench bench = new ToneBench();
    bench.draft.fullScaleV(1.0);
    bench.step(1, 0.4, 1, 1).step(2, 0.3, 1, 1);
    assertEquals(List.of("level-falls-with-volume", "clipping-not-reached"), bench.codes());

    ToneBench unsteady = new ToneBench().step(1, 0.4, 1, 1);
    unsteady.draft.fullScaleV(1.0);
    float[] wave = new float[24_000];
    for (int n = 0; n < wave.length; n++) {
      double amplitude = n < 12_000 ? 0.5 : 0.55;
      wave[n] = (float) (amplitude * Math.sin(2 * Math.PI * 97.3 * n / 48_000));
    }
    unsteady.step(2, wave);
    assertTrue(unsteady.codes().contains("tone-not-steady"));

    ToneBench other = new ToneBench().step(1, 0.4, 1, 1);
    other.draft.fullScaleV(1.0);
    other.toneMadeHz = 110;
    other.step(2, 0.5, 1, 1);
    assertEquals(List.of("tones-differ", "clipping-not-reached"), other.codes());
  }

  @Test
  void aRecordingThatTouchesItsFullScaleIsNotTrusted() {
    ToneBench bench = new ToneBench();
    bench.draft.fullScaleV(1.0);
    bench.step(1, 0.5, 1, 1).step(2, 0.99, 1, 1);
    assertEquals(List.of("recorder-near-full-scale", "clipping-not-reached"), bench.codes());
    bench.step(3, 1.2, 1, 1);
    assertEquals(List.of("/captures/2/recording recording-clipped"), bench.faults());
  }

  @Test
  void noiseIsTakenOutAndTheFloorSaysWhereThatEnds() {
    ToneBench bench = new ToneBench();
    bench.noise = 0.01;
    bench.step(1, 0.5, 1, 1).step(2, 0.5 / 0.95, 0.5, 0.5);
    List<StepFigures> steps = bench.result().steps();
    // White noise of 0.01 to 24 kHz has 0.01·√(2/24) up to 2 kHz: 0.82 % of 0.3536.
    assertEquals(0.82, steps.get(0).noisePercent(), 0.1);
    assertTrue(steps.get(0).distortionPercent() < 2 * steps.get(0).floorPercent());
    assertEquals(1.92, steps.get(1).distortionPercent(), 0.2);
    bench.noise = 0.3;
    bench.step(3, 0.55, 1, 1);
    assertTrue(bench.codes().contains("noise-hides-distortion"));
  }

  @Test
  void aToneBuriedInNoiseIsRefused() {
    ToneBench bench = new ToneBench();
    bench.noise = 0.2;
    // Power of the tone over all: 0.01125/0.05125 is below a quarter.
    bench.step(1, 0.15, 1, 1);
    assertEquals(List.of("/captures/0/recording tone-not-found"), bench.faults());
  }

  @Test
  void aHumBesideTheToneCountsAsNoiseNotAsDistortion() {
    ToneBench bench = new ToneBench();
    float[] wave = new float[48_000];
    for (int n = 0; n < wave.length; n++) {
      double t = n / ToneBench.RATE_HZ;
      wave[n] =
          (float) (0.5 * Math.sin(2 * Math.PI * 97.3 * t) + 0.05 * Math.sin(2 * Math.PI * 150 * t));
    }
    StepFigures step = bench.step(1, wave).first();
    assertEquals(0, step.distortionPercent(), 0.01);
    // 10 % of the tone; what lies under the lobes is filled up with the mean between them.
    assertEquals(10, step.noisePercent(), 1);
  }

  @Test
  void whatIsMissingIsAskedFor() {
    ToneBench bench = new ToneBench().step(1, 0.5, 1, 1);
    bench.draft.measuredDifferentially(null);
    assertEquals(
        List.of("measuring-unknown", "voltage-unknown", "clipping-not-reached"), bench.codes());
    bench.draft.measuredDifferentially(false);
    assertTrue(bench.codes().contains("measured-against-ground"));
    bench.draft.bridged(false);
    assertFalse(bench.codes().contains("measured-against-ground"));
    bench.draft.bandEdgeHz(300.0);
    assertTrue(bench.codes().contains("harmonics-few"));
    bench.draft.bandEdgeHz(40_000.0);
    assertTrue(bench.codes().contains("band-cut-by-rate"));
  }

  @Test
  void longCapturesAreTrimmedToTheirMiddle() {
    ToneBench bench = new ToneBench();
    bench.samples = 300_000;
    bench.step(1, 0.5, 1, 1);
    assertTrue(bench.codes().contains("capture-trimmed"));
    assertEquals(97.3, bench.first().toneHz(), 1e-6);
  }

  @Test
  void capturesThatTellNothingAreRefused() {
    String at = "/captures/0/recording ";
    assertEquals(List.of(at + "recording-silent"), new ToneBench().step(1, 0, 1, 1).faults());
    ToneBench brief = new ToneBench();
    brief.samples = 5_000;
    brief.draft.toneHz(97.3);
    assertEquals(List.of(at + "too-few-periods"), brief.step(1, 0.5, 1, 1).faults());
    brief.draft.toneHz(null);
    assertEquals(List.of(at + "tone-not-found"), brief.faults());
    ToneBench high = new ToneBench();
    high.toneMadeHz = 1500;
    assertEquals(List.of(at + "no-harmonic-in-band"), high.step(1, 0.5, 1, 1).faults());
    ToneBench mixed = new ToneBench().step(1, 0.5, 1, 1);
    float[] samples = new float[1000];
    samples[3] = 0.5f;
    mixed.step(2, Recording.of(44_100, samples));
    assertEquals(List.of("/captures/1/recording sample-rates-mixed"), mixed.faults());
  }

  @Test
  void aToneAboveHalfTheRateIsRefused() {
    ToneBench bench = new ToneBench();
    float[] samples = new float[1000];
    samples[3] = 0.5f;
    bench.step(2, Recording.of(8000, samples));
    bench.draft.toneHz(4000.0);
    assertEquals(List.of("/tone_hz tone-above-half-rate"), bench.faults());
  }

  @Test
  void fieldsThatDoNotBelongTogetherAreRefused() {
    ToneBench both = new ToneBench().step(1, 0.5, 1, 1).reading(1, 0.5, 1.0);
    assertEquals(List.of(" exactly-one-of"), both.faults());
    assertEquals(List.of(" exactly-one-of"), new ToneBench().faults());
    ToneBench twice = new ToneBench().reading(1, 0.5, 1.0).reading(1, 0.6, 1.0);
    twice.draft.fullScaleV(1.0).toneHz(1000.0);
    twice.reading(new Reading(2, 1.0, 1.0, 1.0, null));
    assertEquals(
        List.of(
            "/full_scale_v at-most-one-of",
            "/readings/1/volume_step duplicate",
            "/readings/2/negative_peak_v needed-beside",
            "/tone_hz at-most-one-of"),
        twice.faults().stream().sorted().toList());
    ToneBench open = new ToneBench().reading(1, 0.5, 1.0);
    open.draft.loadOhm(4.0);
    assertEquals(List.of("/load_ohm not-allowed"), open.faults());
  }

  @Test
  void workingsShowTheCleanStep() {
    ToneBench bench = new ToneBench().step(1, 0.5, 1, 1);
    bench.draft.fullScaleV(1.0).toneDbfs(0.0);
    var steps = Answers.withWorkings(new ClipPoint(), bench.request()).workings();
    assertEquals(
        List.of("distortion_percent", "output_v", "input_sensitivity_v"),
        steps.stream().limit(3).map(step -> step.quantity()).toList());
  }
}
