package org.footwell.electrical.gain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.parts.FactoryOutput;
import org.footwell.parts.HeadUnit;
import org.footwell.parts.Stage;
import org.footwell.parts.Stage.Gain;
import org.footwell.parts.Stage.Sensitivity;
import org.footwell.parts.StageBuilder;
import org.footwell.parts.Terminals;

/** Shorthand for requests with little in them, and for what is answered. */
final class Requests {

  private Requests() {}

  static Stage stage(String name, double maxInputV, double maxOutputV, double minDb, double maxDb) {
    return StageBuilder.builder()
        .name(name)
        .maxInputV(maxInputV)
        .maxOutputV(maxOutputV)
        .gain(new Gain(minDb, maxDb))
        .highLevelInput(true)
        .build();
  }

  static Stage amplifier(double maxOutputV, double leastV, double mostV) {
    return StageBuilder.builder()
        .name("amplifier")
        .maxInputV(10.0)
        .maxOutputV(maxOutputV)
        .sensitivity(new Sensitivity(leastV, mostV))
        .highLevelInput(true)
        .build();
  }

  /** A head unit of {@code sourceV}, load 4 ohm, terminals open, no overlap, a tone of -10 dBFS. */
  static GainChainRequestBuilder chain(double sourceV, Stage... stages) {
    return GainChainRequestBuilder.builder()
        .headUnit(new HeadUnit(sourceV, null))
        .stages(List.of(stages))
        .loadOhm(4.0)
        .overlapDb(0.0)
        .testToneDbfs(-10.0)
        .terminals(Terminals.OPEN);
  }

  static GainChainRequest of(double sourceV, double overlapDb, double toneDbfs, Stage... stages) {
    return chain(sourceV, stages).overlapDb(overlapDb).testToneDbfs(toneDbfs).build();
  }

  /** A factory output into an amplifier with a high-level input that reaches its 20 V. */
  static GainChainRequest of(FactoryOutput factory) {
    return of(factory, amplifier(20, 0.5, 20));
  }

  static GainChainRequest of(FactoryOutput factory, Stage... stages) {
    return GainChainRequestBuilder.builder()
        .factoryOutput(factory)
        .stages(List.of(stages))
        .loadOhm(4.0)
        .testToneDbfs(-10.0)
        .terminals(Terminals.OPEN)
        .build();
  }

  static Answer<GainChainResult> answer(GainChainRequest request) {
    return Answers.of(new GainChain(), request);
  }

  static GainChainResult result(GainChainRequest request) {
    return answer(request).result();
  }

  static List<String> codes(GainChainRequest request) {
    return Answers.codes(answer(request));
  }

  static Fault onlyFault(GainChainRequest request) {
    List<Fault> faults = Answers.faults(new GainChain(), request);
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }
}
