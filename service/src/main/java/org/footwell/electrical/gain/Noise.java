package org.footwell.electrical.gain;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.parts.Stage;
import org.footwell.physics.Decibels;
import org.footwell.physics.SensitivityBases;

/**
 * Noise of the parts at the amplifier's output, microvolt RMS.
 *
 * @param sourceUv of the source, null when unknown
 * @param stagesUv of each stage, null where unknown
 * @param totalUv of all that are known, null when none is
 */
record Noise(Double sourceUv, List<Double> stagesUv, Double totalUv) {

  static final Source UNCORRELATED = Source.of("Powers of uncorrelated noise add");

  private static final Formula.Of2 OF_SOURCE =
      Formula.of("source_noise_uv", "N·g", "µV", UNCORRELATED).with("N", "g", (n, g) -> n * g);
  private static final Formula.Of4 OF_STAGE =
      Formula.of("stage_noise_uv", "√((Nin·10^(G/20))² + Nout²)·g", "µV", UNCORRELATED)
          .with(
              "Nin",
              "G",
              "Nout",
              "g",
              (in, gain, out, after) -> Math.hypot(in * Decibels.toAmplitude(gain), out) * after);
  private static final Formula.Of2 SUM =
      Formula.of("noise_uv", "√(a² + b²)", "µV", UNCORRELATED).with("a", "b", Math::hypot);
  private static final Formula.Of3 AT_SEAT =
      Formula.of("noise_level_db", "L + 20·lg(U/2.83 V) + 10·lg(N)", "dB", UNCORRELATED)
          .with(
              "L",
              "U",
              "N",
              (l, u, n) ->
                  l + Decibels.ofAmplitude(u / SensitivityBases.REFERENCE_V) + Decibels.ofPower(n));

  static Noise of(Chain chain, Double sourceNoiseUv, Arithmetic arithmetic) {
    Double source =
        sourceNoiseUv == null
            ? null
            : (Double) arithmetic.apply(OF_SOURCE, sourceNoiseUv, chain.gainAfter(-1));
    Double total = source;
    List<Double> stages = new ArrayList<>();
    for (int i = 0; i < chain.links().size(); i++) {
      Double noise = ofStage(chain, i, arithmetic);
      stages.add(noise);
      if (noise != null) {
        total = total == null ? noise : (Double) arithmetic.apply(SUM, total, noise);
      }
    }
    return new Noise(source, stages, total);
  }

  private static Double ofStage(Chain chain, int index, Arithmetic arithmetic) {
    Chain.Link link = chain.links().get(index);
    Stage stage = link.stage();
    if (!stage.noiseKnown()) {
      return null;
    }
    double in = stage.inputNoiseUv() == null ? 0 : stage.inputNoiseUv();
    double out = stage.outputNoiseUv() == null ? 0 : stage.outputNoiseUv();
    return arithmetic.apply(OF_STAGE, in, link.gainDb(), out, chain.gainAfter(index));
  }

  /** Whether there is any noise to compare with. */
  boolean any() {
    return totalUv != null && totalUv > 0;
  }

  /** A stage's part of the noise power, or null when unknown. */
  Double share(int stage) {
    Double own = stagesUv.get(stage);
    if (own == null || !any()) {
      return null;
    }
    double ratio = own / totalUv;
    return ratio * ratio;
  }

  /**
   * Level at the seat, dB; only when there is any noise.
   *
   * @param oneDbSpl what one channel gives there with 2.83 V
   */
  double levelDb(double oneDbSpl, int channels, Arithmetic arithmetic) {
    return arithmetic.apply(AT_SEAT, oneDbSpl, totalUv / 1e6, channels);
  }
}
