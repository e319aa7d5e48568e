package org.footwell.electrical.gain;

import java.util.List;
import java.util.stream.IntStream;
import org.footwell.Answers;
import org.footwell.parts.HeadUnit;
import org.footwell.parts.Stage;
import org.footwell.parts.Stage.Gain;
import org.footwell.parts.StageBuilder;
import org.footwell.parts.Terminals;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class GainOutsideChecks extends OutsideChecks {

  private static final String CIRCUIT = "gain-chain-ngspice.csv";

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("gain-chain", "output_v", CIRCUIT)
            .printed("output_v")
            .computed(row -> circuit(row).stages().get(2).outputV())
            .withinRelative(0.001),
        OutsideCheck.of("gain-chain", "noise_uv", CIRCUIT)
            .printed("noise_uv")
            .computed(row -> circuit(row).noiseUv())
            .withinRelative(0.001));
  }

  /** The chain of a row: fixed gains and limits so wide that they do not matter. */
  static GainChainResult circuit(Row row) {
    List<Stage> stages =
        IntStream.rangeClosed(1, 3)
            .mapToObj(
                i -> {
                  double gain = row.number("gain_" + i + "_db");
                  return StageBuilder.builder()
                      .name("stage " + i)
                      .maxInputV(200.0)
                      .maxOutputV(500.0)
                      .gain(new Gain(gain, gain))
                      .inputNoiseUv(row.number("input_noise_" + i + "_uv"))
                      .outputNoiseUv(row.number("output_noise_" + i + "_uv"))
                      .build();
                })
            .toList();
    HeadUnit source = new HeadUnit(row.number("source_v"), row.number("source_noise_uv"));
    GainChainRequest request =
        GainChainRequestBuilder.builder()
            .headUnit(source)
            .stages(stages)
            .loadOhm(4.0)
            .testToneDbfs(0.0)
            .terminals(Terminals.OPEN)
            .build();
    return Answers.of(new GainChain(), request).result();
  }
}
