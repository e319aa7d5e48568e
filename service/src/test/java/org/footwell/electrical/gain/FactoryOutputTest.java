package org.footwell.electrical.gain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Verdict;
import org.footwell.parts.FactoryOutput;
import org.footwell.parts.FactoryOutput.TurnOn;
import org.footwell.parts.FactoryOutputBuilder;
import org.footwell.parts.Stage;
import org.footwell.parts.StageBuilder;
import org.junit.jupiter.api.Test;

class FactoryOutputTest {

  /** Everything known and as it should be, of a supply and what is stated. */
  private static FactoryOutput known(
      double supplyV, double dropV, Double statedW, Double statedOhm, Boolean bridged) {
    return FactoryOutputBuilder.builder()
        .supplyV(supplyV)
        .dropV(dropV)
        .statedPowerW(statedW)
        .statedLoadOhm(statedOhm)
        .bridged(bridged)
        .measuredDifferentially(true)
        .loadDetection(false)
        .turnOn(TurnOn.REMOTE_WIRE)
        .build();
  }

  private static FactoryOutput measured(
      Boolean bridged, Boolean differentially, Boolean detection, TurnOn turnOn) {
    return FactoryOutputBuilder.builder()
        .cleanOutputV(8.0)
        .bridged(bridged)
        .measuredDifferentially(differentially)
        .loadDetection(detection)
        .turnOn(turnOn)
        .build();
  }

  private static FactoryOutput loaded(Boolean detection, Double ohm, Double ratedW) {
    return FactoryOutputBuilder.builder()
        .cleanOutputV(8.0)
        .bridged(true)
        .measuredDifferentially(true)
        .loadDetection(detection)
        .loadResistorOhm(ohm)
        .loadResistorRatedW(ratedW)
        .turnOn(TurnOn.REMOTE_WIRE)
        .build();
  }

  @Test
  void fourTimesFiftyWattIsTheBridgeOnItsSupply() {
    Answer<GainChainResult> answer = Requests.answer(Requests.of(known(14.4, 2, 50.0, 4.0, true)));
    assertEquals(12.4 / Math.sqrt(2), answer.result().sourceOutputV(), 1e-12);
    assertEquals(19.22, answer.result().factory().cleanPowerW(), 1e-9);
    assertEquals(List.of("stated-power-not-clean"), Answers.codes(answer));
    assertEquals(50, answer.findings().get(0).limit(), 0);
  }

  @Test
  void aSmallStatedPowerIsNotExceeded() {
    Answer<GainChainResult> answer = Requests.answer(Requests.of(known(14.4, 2, 9.0, 4.0, true)));
    assertEquals(6, answer.result().sourceOutputV(), 1e-12);
    assertEquals(List.of(), Answers.codes(answer));
  }

  @Test
  void anOutputThatIsNoBridgeSwingsHalfAsFar() {
    GainChainResult result = Requests.result(Requests.of(known(14.4, 2.4, null, null, false)));
    assertEquals(6, result.factory().cleanPeakV(), 1e-12);
    assertNull(result.factory().cleanPowerW());
  }

  @Test
  void whatIsNotKnownIsAskedFor() {
    Stage unknown =
        StageBuilder.builder(Requests.amplifier(20, 0.5, 20)).highLevelInput(null).build();
    Answer<GainChainResult> answer =
        Requests.answer(Requests.of(measured(null, null, null, null), unknown));
    assertEquals(
        List.of(
            "measuring-unknown",
            "high-level-input-unknown",
            "bridge-assumed",
            "turn-on-unknown",
            "load-detection-unknown"),
        Answers.codes(answer));
    assertEquals(Verdict.WARNING, answer.verdict());
  }

  @Test
  void aBridgeIsNeitherMeasuredAgainstGroundNorJoinedToALineInput() {
    Stage line =
        StageBuilder.builder(Requests.amplifier(20, 0.5, 20)).highLevelInput(false).build();
    Answer<GainChainResult> answer =
        Requests.answer(Requests.of(measured(true, false, false, TurnOn.REMOTE_WIRE), line));
    assertEquals(List.of("measured-against-ground", "line-input-on-bridge"), Answers.codes(answer));
    assertEquals(Verdict.STOP, answer.verdict());
    assertEquals("/stages/0/high_level_input", answer.findings().get(1).pointer());
    assertEquals(
        List.of(),
        Requests.codes(Requests.of(measured(false, false, false, TurnOn.REMOTE_WIRE), line)));
  }

  @Test
  void aRadioThatLooksForLoudspeakersNeedsAResistorThatBearsIt() {
    assertEquals(
        List.of("load-resistor-missing"), Requests.codes(Requests.of(loaded(true, null, null))));
    Answer<GainChainResult> weak = Requests.answer(Requests.of(loaded(true, 20.0, 3.0)));
    assertEquals(3.2, weak.result().factory().loadResistorW(), 1e-12); // 8²/20
    assertEquals(List.of("load-resistor-too-weak"), Answers.codes(weak));
    assertEquals(List.of(), Requests.codes(Requests.of(loaded(true, 20.0, 5.0))));
  }

  @Test
  void turningOnIsJudged() {
    assertEquals(
        List.of("turn-on-by-signal"),
        Requests.codes(Requests.of(measured(true, true, false, TurnOn.SIGNAL))));
    assertEquals(
        List.of("turn-on-without-offset"),
        Requests.codes(Requests.of(measured(false, null, false, TurnOn.DC_OFFSET))));
    assertEquals(
        List.of(), Requests.codes(Requests.of(measured(true, true, false, TurnOn.DC_OFFSET))));
  }

  @Test
  void impossibleOutputsAreRefused() {
    Fault drop = Requests.onlyFault(Requests.of(known(14.4, 14.4, null, null, true)));
    assertEquals("not-ascending", drop.code());
    assertEquals("/factory_output/supply_v", drop.pointer());
    Fault load = Requests.onlyFault(Requests.of(known(14.4, 2, 50.0, null, true)));
    assertEquals("needed-beside", load.code());
    assertEquals("/factory_output/stated_load_ohm", load.pointer());
    assertTrue(load.detail().endsWith("is required beside stated_power_w."), load::detail);
    FactoryOutput nothing = FactoryOutputBuilder.builder().loadResistorRatedW(5.0).build();
    assertEquals(
        List.of("/factory_output", "/factory_output/load_resistor_ohm"),
        Answers.faults(new GainChain(), Requests.of(nothing)).stream()
            .map(Fault::pointer)
            .toList());
  }
}
