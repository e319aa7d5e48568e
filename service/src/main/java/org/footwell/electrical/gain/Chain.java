package org.footwell.electrical.gain;

import static org.footwell.calculation.Source.COMMON_PRACTICE;
import static org.footwell.calculation.Source.DEFINITION;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.parts.Stage;
import org.footwell.physics.Decibels;

/**
 * The stages with a full-scale sine at the source, each set so that its output just fills what it
 * and the next stage can take, as far as its range allows.
 */
record Chain(List<Link> links) {

  static final Formula.Of2 GAIN =
      Formula.of("gain_db", "20·lg(output/input)", "dB", DEFINITION)
          .with("output", "input", (output, input) -> Decibels.ofAmplitude(output / input));
  private static final Formula.Of2 LEVEL =
      Formula.of("output_v", "input·10^(G/20)", "V", DEFINITION)
          .with("input", "G", (input, gain) -> input * Decibels.toAmplitude(gain));

  /** Output in V that a full-scale sine would have if the amplifier could, overlap in dB. */
  private static final Formula.Of2 OVERLAPPED =
      Formula.of("overlapped_output_v", "largest output·10^(overlap/20)", "V", COMMON_PRACTICE)
          .with("largest output", "overlap", (v, db) -> v * Decibels.toAmplitude(db));

  /**
   * One stage as it is set.
   *
   * @param wantedDb gain at which it would fill what follows
   * @param gainDb the nearest that can be set
   * @param inputV with a full-scale sine, if nothing clipped
   * @param outputV likewise
   */
  record Link(Stage stage, double wantedDb, double gainDb, double inputV, double outputV) {

    double inputMarginDb() {
      return GAIN.at(stage.maxInputV(), inputV);
    }

    double outputMarginDb() {
      return GAIN.at(stage.maxOutputV(), outputV);
    }

    /** Input that gives the largest clean output, V. */
    double sensitivityV() {
      return LEVEL.at(stage.maxOutputV(), -gainDb);
    }
  }

  static Chain of(double sourceV, List<Stage> stages, double overlapDb, Arithmetic arithmetic) {
    List<Link> links = new ArrayList<>();
    double input = sourceV;
    for (int i = 0; i < stages.size(); i++) {
      Stage stage = stages.get(i);
      double fills =
          i == stages.size() - 1
              ? arithmetic.apply(OVERLAPPED, stage.maxOutputV(), overlapDb)
              : Math.min(stage.maxOutputV(), stages.get(i + 1).maxInputV());
      double wanted = arithmetic.apply(GAIN, fills, input);
      double gain = Math.min(Math.max(wanted, leastDb(stage)), mostDb(stage));
      double output = arithmetic.apply(LEVEL, input, gain);
      links.add(new Link(stage, wanted, gain, input, output));
      input = output;
    }
    return new Chain(links);
  }

  private static double leastDb(Stage stage) {
    return stage.gain() != null
        ? stage.gain().minDb()
        : GAIN.at(stage.maxOutputV(), stage.sensitivity().maxV());
  }

  private static double mostDb(Stage stage) {
    return stage.gain() != null
        ? stage.gain().maxDb()
        : GAIN.at(stage.maxOutputV(), stage.sensitivity().minV());
  }

  Link amplifier() {
    return links.get(links.size() - 1);
  }

  /** Largest sine that passes clean, dBFS. */
  double cleanDbfs() {
    return links.stream()
        .mapToDouble(link -> Math.min(link.inputMarginDb(), link.outputMarginDb()))
        .reduce(0, Math::min);
  }

  /** Gain from the output of a stage to the amplifier's output, as a ratio; −1 is the source. */
  double gainAfter(int stage) {
    return Decibels.toAmplitude(links.stream().skip(stage + 1).mapToDouble(Link::gainDb).sum());
  }
}
