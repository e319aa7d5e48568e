package org.footwell.factory.clip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.factory.clip.ClipPointResult.StepFigures;

class ClipPointProperties {

  @Property(tries = 25)
  void distortionDoesNotDependOnTheRecordersGain(
      @ForAll @DoubleRange(min = 0.01, max = 1) double gain,
      @ForAll @DoubleRange(min = 0.3, max = 0.99) double held) {
    StepFigures full = new ToneBench().step(1, 0.9, 0.9 * held, 0.9 * held).first();
    StepFigures soft =
        new ToneBench().step(1, 0.9 * gain, 0.9 * gain * held, 0.9 * gain * held).first();
    assertEquals(full.distortionPercent(), soft.distortionPercent(), 1e-3);
    assertEquals(full.recordedLevelDb() + 20 * Math.log10(gain), soft.recordedLevelDb(), 1e-4);
  }

  @Property(tries = 25)
  void turningTheWaveOverChangesNothing(
      @ForAll @DoubleRange(min = 0.4, max = 0.99) double top,
      @ForAll @DoubleRange(min = 0.4, max = 0.99) double bottom) {
    StepFigures one = new ToneBench().step(1, 0.99, top, bottom).first();
    StepFigures turned = new ToneBench().step(1, -0.99, bottom, top).first();
    assertEquals(one.evenPercent(), turned.evenPercent(), 1e-3);
    assertEquals(one.oddPercent(), turned.oddPercent(), 1e-3);
  }

  @Property(tries = 40)
  void anyToneIsTrackedWhereverItLiesBetweenTheBins(
      @ForAll @DoubleRange(min = 30, max = 900) double tone) {
    ToneBench bench = new ToneBench();
    bench.toneMadeHz = tone;
    StepFigures step = bench.step(1, 0.9, 1, 1).first();
    assertEquals(tone, step.toneHz(), 1e-4);
    assertEquals(20 * Math.log10(0.9), step.recordedLevelDb(), 1e-3);
    assertEquals(0, step.distortionPercent(), 0.002);
  }

  @Property(tries = 30)
  void distortionIsThatOfEvenAndOddHarmonicsTogether(
      @ForAll @DoubleRange(min = 0.3, max = 0.9) double top) {
    StepFigures step = new ToneBench().step(1, 0.9, top, 0.7).first();
    assertEquals(Math.hypot(step.evenPercent(), step.oddPercent()), step.distortionPercent(), 1e-6);
  }
}
