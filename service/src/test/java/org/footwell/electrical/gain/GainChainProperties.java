package org.footwell.electrical.gain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.electrical.gain.GainChainResult.Setting;
import org.footwell.parts.HeadUnit;
import org.footwell.parts.Stage;
import org.footwell.parts.StageBuilder;

class GainChainProperties {

  @Property
  void withRangesWideEnoughEverythingMeetsAtFullScaleButForTheOverlap(
      @ForAll @DoubleRange(min = 0.5, max = 9) double source,
      @ForAll @DoubleRange(min = 1, max = 10) double processorOut,
      @ForAll @DoubleRange(min = 5, max = 80) double full,
      @ForAll @DoubleRange(min = 0, max = 20) double overlap) {
    GainChainResult result =
        Requests.result(
            Requests.of(
                source,
                overlap,
                -20,
                Requests.stage("processor", 10, processorOut, -60, 60),
                Requests.stage("amplifier", 10, full, -60, 80)));
    assertEquals(0, result.stages().get(0).outputMarginDb(), 1e-9);
    assertEquals(-overlap, result.stages().get(1).outputMarginDb(), 1e-9);
    assertEquals(-overlap, result.cleanDbfs(), 1e-9);
    double total = result.stages().stream().mapToDouble(Setting::gainDb).sum();
    assertEquals(20 * Math.log10(full / source) + overlap, total, 1e-9);
  }

  @Property
  void theTargetNeverPassesTheCleanOutputUnlessSaid(
      @ForAll @DoubleRange(min = 0.5, max = 9) double source,
      @ForAll @DoubleRange(min = -30, max = 30) double least,
      @ForAll @DoubleRange(min = 0, max = 40) double width,
      @ForAll @DoubleRange(min = 0, max = 10) double overlap) {
    GainChainRequest request =
        Requests.of(
            source,
            overlap,
            -overlap,
            Requests.stage("processor", 10, 4, -60, 60),
            Requests.stage("amplifier", 10, 20, least, least + width));
    boolean said = Requests.codes(request).contains("tone-clips");
    double target = Requests.result(request).targetV();
    assertTrue(said || target <= 20 * 1.0012, () -> "target " + target);
  }

  @Property
  void noiseGrowsWithEachPartAndSharesAddUpToOne(
      @ForAll @DoubleRange(min = 1, max = 500) double first,
      @ForAll @DoubleRange(min = 1, max = 500) double second,
      @ForAll @DoubleRange(min = 0.5, max = 9) double source) {
    Stage processor =
        StageBuilder.builder(Requests.stage("processor", 10, 4, -60, 60))
            .inputNoiseUv(first)
            .build();
    Stage amplifier =
        StageBuilder.builder(Requests.amplifier(20, 0.01, 20)).outputNoiseUv(second).build();
    GainChainResult quiet =
        Requests.result(
            Requests.chain(source, processor, amplifier)
                .headUnit(new HeadUnit(source, 0.0))
                .build());
    assertEquals(1, quiet.stages().stream().mapToDouble(Setting::noiseShare).sum(), 1e-9);
    GainChainResult noisy =
        Requests.result(
            Requests.chain(source, processor, amplifier)
                .headUnit(new HeadUnit(source, 50.0))
                .build());
    assertTrue(noisy.noiseUv() > quiet.noiseUv());
    assertTrue(noisy.signalToNoiseDb() < quiet.signalToNoiseDb());
  }

  @Property
  void moreSourceVoltageIsLessGainAndTheSameTarget(
      @ForAll @DoubleRange(min = 0.5, max = 4) double source) {
    Stage amplifier = Requests.stage("amplifier", 10, 20, -60, 80);
    GainChainResult one = Requests.result(Requests.of(source, 5, -10, amplifier));
    GainChainResult two = Requests.result(Requests.of(2 * source, 5, -10, amplifier));
    assertEquals(one.targetV(), two.targetV(), 1e-9);
    assertEquals(
        20 * Math.log10(2), one.stages().get(0).gainDb() - two.stages().get(0).gainDb(), 1e-9);
  }
}
