package org.footwell.electrical.gain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Shape;
import org.footwell.calculation.Verdict;
import org.footwell.electrical.gain.GainChainRequest.Seat;
import org.footwell.electrical.gain.GainChainRequest.Weighting;
import org.footwell.electrical.gain.GainChainResult.Setting;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.HeadUnit;
import org.footwell.parts.Stage;
import org.footwell.parts.Stage.Gain;
import org.footwell.parts.Stage.Sensitivity;
import org.footwell.parts.StageBuilder;
import org.footwell.parts.Terminals;
import org.junit.jupiter.api.Test;

class GainChainTest {

  private static final Stage PROCESSOR = Requests.stage("processor", 4, 4, -20, 12);

  @Test
  @SuppressWarnings("unchecked")
  void theExampleOfTheMethodPage() throws JsonProcessingException {
    GainChain calculation = new GainChain();
    Map<String, Object> example =
        new ObjectMapper().readValue(calculation.card().example(), Map.class);
    Engine engine = new Engine();
    GainChainRequest request = engine.bind(GainChainRequest.class, example, false);
    var answer = engine.answer(calculation, request, false, Duration.ofSeconds(5));
    GainChainResult result = answer.result();
    assertEquals(8.7681, result.sourceOutputV(), 5e-5); // 12.4/√2
    assertEquals(12.4, result.factory().cleanPeakV(), 1e-9);
    assertEquals(19.22, result.factory().cleanPowerW(), 1e-9); // 12.4²/8
    Setting processor = result.stages().get(0);
    assertEquals(-6.817, processor.gainDb(), 5e-4);
    assertEquals(2.7255, processor.inputMarginDb(), 5e-5);
    assertEquals(0, processor.outputMarginDb(), 1e-9);
    Setting amplifier = result.stages().get(1);
    assertEquals(18.979, amplifier.gainDb(), 5e-4);
    assertEquals(2.2494, amplifier.sensitivityV(), 5e-5); // 4 V less 5 dB
    assertEquals(-5, amplifier.outputMarginDb(), 1e-9);
    assertEquals(20, result.targetLoadedV(), 1e-9);
    assertEquals(20.2, result.targetOpenV(), 1e-9);
    assertEquals(20.2, result.targetV(), 1e-9);
    assertNull(result.tonePowerW());
    assertEquals(-5, result.cleanDbfs(), 1e-9);
    assertEquals(825.3, result.noiseUv(), 0.05);
    assertEquals(87.69, result.signalToNoiseDb(), 5e-3);
    assertEquals(19.30, result.noiseLevelDba(), 5e-3);
    assertNull(result.noiseLevelDbSpl());
    assertEquals(List.of("stated-power-not-clean"), Answers.codes(answer));
    assertTrue(Shape.of(GainChainRequest.class).flat());
  }

  @Test
  void withoutOverlapAllStagesReachTheirLimitTogether() {
    GainChainResult result =
        Requests.result(Requests.of(2, 0, 0, PROCESSOR, Requests.amplifier(20, 0.2, 5)));
    assertEquals(6.0206, result.stages().get(0).gainDb(), 5e-5); // 4 V from 2 V
    assertEquals(13.9794, result.stages().get(1).gainDb(), 5e-5); // 20 V from 4 V
    assertEquals(4, result.stages().get(1).sensitivityV(), 1e-9);
    result.stages().forEach(stage -> assertEquals(0, stage.outputMarginDb(), 1e-9));
    assertEquals(20, result.targetV(), 1e-9);
    assertEquals(0, result.cleanDbfs(), 1e-9);
  }

  @Test
  void aStageFillsNoMoreThanTheNextCanTake() {
    Stage driver = Requests.stage("line driver", 5, 9, 0, 20);
    GainChainResult result =
        Requests.result(Requests.of(2, 0, 0, driver, PROCESSOR, Requests.amplifier(20, 0.2, 5)));
    assertEquals(4, result.stages().get(0).outputV(), 1e-9);
    assertEquals(7.0437, result.stages().get(0).outputMarginDb(), 5e-5); // 9 V over 4 V
    assertEquals(0, result.stages().get(1).inputMarginDb(), 1e-9);
  }

  @Test
  void theTargetIsThatOfTheToneBelowFullScale() {
    GainChainRequest request = Requests.of(2, 6, -12, PROCESSOR, Requests.amplifier(20, 0.2, 5));
    // 6 dB overlap and a tone at −12 dBFS leave 6 dB below full output.
    assertEquals(20 * Math.pow(10, -0.3), Requests.result(request).targetV(), 1e-9);
  }

  @Test
  void loadedTerminalsAreSaidAndTheTonesPowerWithThem() {
    GainChainRequest request =
        GainChainRequestBuilder.builder()
            .headUnit(new HeadUnit(4.0, null))
            .stages(List.of(Requests.amplifier(20, 0.2, 5)))
            .loadOhm(4.0)
            .amplifier(AmplifierBuilder.builder().outputOhm(0.04).build())
            .testToneDbfs(-20.0)
            .terminals(Terminals.LOADED)
            .build();
    Answer<GainChainResult> answer = Requests.answer(request);
    assertEquals(2, answer.result().targetV(), 1e-9);
    assertEquals(2.02, answer.result().targetOpenV(), 1e-9);
    assertEquals(1, answer.result().tonePowerW(), 1e-9);
    assertEquals(List.of("tone-into-driver"), Answers.codes(answer));
  }

  @Test
  void aStageThatClipsEarlyIsNamedAndTheToneStopsWhenItClipsToo() {
    Stage small = Requests.stage("converter", 2, 4, -20, 12);
    Answer<GainChainResult> answer =
        Requests.answer(Requests.of(4, 0, -10, small, Requests.amplifier(20, 0.2, 5)));
    assertEquals(List.of("stage-clips-early"), Answers.codes(answer));
    assertEquals("/stages/0/max_input_v", answer.findings().get(0).pointer());
    assertEquals(6.0206, answer.findings().get(0).value(), 5e-5);
    assertEquals(-6.0206, answer.result().cleanDbfs(), 5e-5);
    Answer<GainChainResult> loud =
        Requests.answer(Requests.of(4, 0, -3, small, Requests.amplifier(20, 0.2, 5)));
    assertEquals(List.of("tone-clips", "stage-clips-early"), Answers.codes(loud));
    assertEquals(Verdict.STOP, loud.verdict());
  }

  @Test
  void anAmplifierThatCannotBeTurnedDownClipsAtItsOutput() {
    Answer<GainChainResult> answer =
        Requests.answer(Requests.of(4, 0, -10, Requests.amplifier(20, 0.2, 2)));
    assertEquals(List.of("stage-clips-early"), Answers.codes(answer));
    assertEquals("/stages/0/max_output_v", answer.findings().get(0).pointer());
    assertEquals(20, answer.result().stages().get(0).gainDb(), 1e-9);
    // As an overlap of 6.02 dB it is wanted.
    assertEquals(
        List.of(),
        Requests.codes(Requests.of(4, 20 * Math.log10(2), -10, Requests.amplifier(20, 0.2, 2))));
  }

  @Test
  void anAmplifierThatGetsTooLittleCannotReach() {
    Answer<GainChainResult> answer =
        Requests.answer(Requests.of(0.5, 0, -10, Requests.amplifier(20, 1, 5)));
    assertEquals(List.of("amplifier-cannot-reach"), Answers.codes(answer));
    assertEquals("/stages/0/sensitivity/min_v", answer.findings().get(0).pointer());
    assertEquals(6.0206, answer.findings().get(0).value(), 5e-5);
    assertEquals(10 * Math.pow(10, -0.5), answer.result().targetV(), 1e-9);
  }

  @Test
  void aStageBeforeThatCannotReachIsMadeUpFor() {
    Stage fixed = Requests.stage("processor", 4, 4, 0, 0);
    Answer<GainChainResult> answer =
        Requests.answer(Requests.of(1, 0, -10, fixed, Requests.amplifier(20, 0.2, 5)));
    assertEquals(List.of("stage-cannot-reach"), Answers.codes(answer));
    assertEquals(12.0412, answer.findings().get(0).value(), 5e-5);
    assertEquals("/stages/0/gain/max_db", answer.findings().get(0).pointer());
    assertEquals(20, answer.result().stages().get(1).outputV(), 1e-9);
  }

  @Test
  void aStageRunFarBelowItsLimitCostsNoise() {
    Stage amplifier =
        StageBuilder.builder(Requests.amplifier(20, 0.2, 10)).inputNoiseUv(20.0).build();
    GainChainRequestBuilder chain = Requests.chain(0.5, amplifier).headUnit(new HeadUnit(0.5, 2.0));
    Seat seat = new Seat(95.0, Weighting.A, null, null);
    Answer<GainChainResult> answer = Requests.answer(chain.seat(seat).build());
    // 40 times 20 µV and 2 µV: 804 µV; 95 + 20·lg(804e-6/2.83) = 24.07.
    assertEquals(803.99, answer.result().noiseUv(), 5e-3);
    assertEquals(24.07, answer.result().noiseLevelDba(), 5e-3);
    assertEquals(400.0 / 404, answer.result().stages().get(0).noiseShare(), 1e-9);
    assertEquals(List.of(), Answers.codes(answer));
    Seat quiet = new Seat(95.0, Weighting.UNWEIGHTED, 4, 30.0);
    Answer<GainChainResult> four = Requests.answer(chain.seat(quiet).build());
    assertEquals(30.09, four.result().noiseLevelDbSpl(), 5e-3); // 6.02 dB more
    assertEquals(List.of("noise-audible", "stage-costs-noise"), Answers.codes(four));
    assertEquals(26.0206, four.findings().get(1).value(), 5e-5); // 10 V over 0.5 V
  }

  @Test
  void noiseThatIsNotGivenIsNotMadeUp() {
    Seat seat = new Seat(90.0, Weighting.A, null, null);
    Answer<GainChainResult> none =
        Requests.answer(Requests.chain(4, Requests.amplifier(20, 0.2, 5)).seat(seat).build());
    assertEquals(List.of("noise-incomplete"), Answers.codes(none));
    assertNull(none.result().noiseUv());
    assertNull(none.result().noiseLevelDba());
    assertTrue(
        none.findings().get(0).inFull().contains("for the source, amplifier:"),
        none.findings().get(0)::text);
    Stage noiseless =
        StageBuilder.builder(Requests.amplifier(20, 0.2, 5)).inputNoiseUv(0.0).build();
    Answer<GainChainResult> silent =
        Requests.answer(
            Requests.chain(4, noiseless).headUnit(new HeadUnit(4.0, 0.0)).seat(seat).build());
    assertEquals(0, silent.result().noiseUv(), 0);
    assertNull(silent.result().signalToNoiseDb());
  }

  @Test
  void aLargeOverlapIsSaid() {
    assertEquals(
        List.of("overlap-large"),
        Requests.codes(Requests.of(4, 12, -20, Requests.amplifier(20, 0.2, 5))));
  }

  @Test
  void badInputIsRefusedWithItsField() {
    Stage upsideDown = Requests.stage("processor", 4, 4, 12, -20);
    Fault gain = Requests.onlyFault(Requests.of(4, 0, -10, upsideDown));
    assertEquals("not-ascending", gain.code());
    assertEquals("/stages/0/gain/max_db", gain.pointer());
    assertEquals("-20.0", gain.given());
    Fault sensitivity = Requests.onlyFault(Requests.of(4, 0, -10, Requests.amplifier(20, 5, 1)));
    assertEquals("/stages/0/sensitivity/max_v", sensitivity.pointer());
    Fault tone = Requests.onlyFault(Requests.of(4, 5, -4, Requests.amplifier(20, 0.2, 5)));
    assertEquals("tone-above-full-output", tone.code());
    assertEquals("/test_tone_dbfs", tone.pointer());
    assertEquals("at most -5 dBFS", tone.allowed());
    Fault twice = Requests.onlyFault(Requests.of(4, 0, -10, PROCESSOR, PROCESSOR));
    assertEquals("duplicate", twice.code());
    assertEquals("/stages/1/name", twice.pointer());
    Stage both =
        StageBuilder.builder()
            .name("a")
            .maxInputV(4.0)
            .maxOutputV(4.0)
            .gain(new Gain(0.0, 1.0))
            .sensitivity(new Sensitivity(1.0, 2.0))
            .build();
    assertEquals("exactly-one-of", Requests.onlyFault(Requests.of(4, 0, -10, both)).code());
  }

  @Test
  void zeroLimitsAndMissingSourcesAreRefused() {
    Stage nothing = Requests.stage("a", 0, 0, 0, 0);
    assertEquals(
        List.of("/head_unit/clean_output_v", "/stages/0/max_input_v", "/stages/0/max_output_v"),
        Answers.faults(new GainChain(), Requests.of(0, 0, -10, nothing)).stream()
            .map(Fault::pointer)
            .sorted()
            .toList());
    GainChainRequest noSource =
        GainChainRequestBuilder.builder()
            .stages(List.of(PROCESSOR))
            .loadOhm(4.0)
            .testToneDbfs(-10.0)
            .terminals(Terminals.OPEN)
            .build();
    assertEquals("exactly-one-of", Requests.onlyFault(noSource).code());
  }
}
