package org.footwell.electrical.gain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.electrical.gain.GainChainRequest.HeadUnit;
import org.footwell.electrical.gain.GainChainRequest.Seat;
import org.footwell.electrical.gain.GainChainRequest.Terminals;
import org.footwell.electrical.gain.Stage.Gain;
import org.footwell.electrical.gain.Stage.Sensitivity;

/** Shorthand for requests with little in them, and for what is answered. */
final class Requests {

  private Requests() {}

  static Stage stage(String name, double maxInputV, double maxOutputV, double minDb, double maxDb) {
    return new Stage(name, maxInputV, maxOutputV, new Gain(minDb, maxDb), null, null, null, true);
  }

  static Stage amplifier(double maxOutputV, double leastV, double mostV) {
    return new Stage(
        "amplifier", 10.0, maxOutputV, null, new Sensitivity(leastV, mostV), null, null, true);
  }

  static Stage noisy(Stage s, Double inputUv, Double outputUv) {
    return new Stage(
        s.name(),
        s.maxInputV(),
        s.maxOutputV(),
        s.gain(),
        s.sensitivity(),
        inputUv,
        outputUv,
        s.highLevelInput());
  }

  static Stage input(Stage s, Boolean highLevel) {
    return new Stage(
        s.name(),
        s.maxInputV(),
        s.maxOutputV(),
        s.gain(),
        s.sensitivity(),
        s.inputNoiseUv(),
        s.outputNoiseUv(),
        highLevel);
  }

  /** A head unit of {@code sourceV}, load 4 ohm, terminals open. */
  static GainChainRequest of(double sourceV, double overlapDb, double toneDbfs, Stage... stages) {
    return of(sourceV, null, overlapDb, toneDbfs, null, stages);
  }

  static GainChainRequest of(
      double sourceV,
      Double sourceNoiseUv,
      double overlapDb,
      double toneDbfs,
      Seat seat,
      Stage... stages) {
    HeadUnit unit = new HeadUnit(sourceV, sourceNoiseUv);
    return GainChainRequestBuilder.builder()
        .headUnit(unit)
        .stages(List.of(stages))
        .loadOhm(4.0)
        .outputOhm(0.0)
        .overlapDb(overlapDb)
        .testToneDbfs(toneDbfs)
        .terminals(Terminals.OPEN)
        .seat(seat)
        .build();
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
