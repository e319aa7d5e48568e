package org.footwell.electrical.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Shape;
import org.footwell.calculation.Verdict;
import org.footwell.electrical.heat.AmplifierHeatRequest.ChannelStage;
import org.footwell.electrical.heat.AmplifierHeatRequest.Topology;
import org.footwell.electrical.heat.AmplifierHeatResult.ChannelHeat;
import org.footwell.electrical.heat.AmplifierHeatResult.TotalDraw;
import org.footwell.parts.ClassD;
import org.junit.jupiter.api.Test;

class AmplifierHeatTest {

  /** The worked example of the method page. */
  private static final ChannelStage BY_HAND = Requests.classB(30, 2, 4, 0);

  private static ChannelHeat channel(ChannelStage channel) {
    return Requests.result(Requests.of(channel)).channels().get(0);
  }

  @Test
  void theExampleOfTheMethodPage() {
    AmplifierHeatResult result = Requests.result(Requests.of(BY_HAND));
    ChannelHeat channel = result.channels().get(0);
    assertEquals(28, channel.fullSwingV(), 0);
    assertEquals(98, channel.fullPowerW(), 1e-9); // 28²/8
    assertEquals(133.690, channel.sine().railPowerW(), 5e-4); // 30·7·2/π
    assertEquals(2.2282, channel.sine().railCurrentA(), 5e-5); // 7/π
    assertEquals(35.690, channel.sine().heatW(), 5e-4);
    assertEquals(0.63662, channel.worstSwingRatio(), 5e-6);
    assertEquals(45.595, channel.worstHeatW(), 5e-4); // 2·30²/(π²·4)
    assertEquals(12.25, channel.musicEighth().outputPowerW(), 1e-9);
    assertEquals(41.889, channel.musicEighth().railPowerW(), 5e-4); // 30·1.75·√(2/π)
    assertEquals(29.639, channel.musicEighth().heatW(), 5e-4);
    assertEquals(32.667, channel.musicThird().outputPowerW(), 5e-4);
    assertEquals(68.404, channel.musicThird().railPowerW(), 5e-4);
    assertEquals(35.738, channel.musicThird().heatW(), 5e-4);
    assertEquals(7, channel.peakOutputCurrentA(), 0);
    assertEquals(7, channel.peakRailCurrentA(), 0);
    assertEquals(210, channel.peakRailPowerW(), 0);

    assertEquals(157.283, result.total().sine().batteryPowerW(), 5e-4); // 133.690/0.85
    assertEquals(11.397, result.total().sine().batteryCurrentA(), 5e-4);
    assertEquals(59.283, result.total().sine().heatW(), 5e-4);
    assertEquals(3.571, result.total().musicEighth().batteryCurrentA(), 5e-4);
    assertEquals(37.031, result.total().musicEighth().heatW(), 5e-4);
    assertEquals(5.832, result.total().musicThird().batteryCurrentA(), 5e-4);
    assertEquals(17.903, result.total().peakBatteryCurrentA(), 5e-4); // 210/0.85/13.8
    assertEquals(0, result.total().idle().batteryCurrentA(), 0);
  }

  @Test
  void aReactiveLoadMovesTheWorstCaseTowardsFullSwing() {
    Answer<AmplifierHeatResult> answer =
        Requests.answer(Requests.of(Requests.classB(30, 2, 4, 60)));
    ChannelHeat channel = answer.result().channels().get(0);
    assertEquals(28.0 / 30, channel.worstSwingRatio(), 1e-12); // 2/(π·cos 60°) would be 1.27
    assertEquals(84.690, channel.worstHeatW(), 5e-4);
    assertEquals(49, channel.fullPowerW(), 1e-9);
    assertEquals(133.690, channel.sine().railPowerW(), 5e-4);
    assertEquals(List.of("reactive-worst-case"), Answers.codes(answer));
    assertEquals("/channels/0/phase_deg", answer.findings().get(0).pointer());
    assertEquals(45.595, answer.findings().get(0).limit(), 5e-4);
  }

  @Test
  void aModeratePhaseMovesItByTheCosine() {
    ChannelHeat channel = channel(Requests.classB(30, 2, 4, 30));
    double cos = Math.sqrt(3) / 2;
    assertEquals(2 / (Math.PI * cos), channel.worstSwingRatio(), 1e-12);
    assertEquals(1800 / (Math.PI * Math.PI * 4 * cos), channel.worstHeatW(), 1e-9);
  }

  @Test
  void aPureReactanceTakesNoPowerAndMakesOnlyHeat() {
    ChannelHeat channel = channel(Requests.classB(30, 2, 4, -90));
    assertEquals(0, channel.fullPowerW(), 0);
    assertEquals(channel.sine().railPowerW(), channel.sine().heatW(), 0);
    assertEquals(28.0 / 30, channel.worstSwingRatio(), 1e-12);
    assertEquals(133.690, channel.worstHeatW(), 5e-4);
  }

  @Test
  void quiescentCurrentHeatsWithoutSignalAndHardlyAtFullSwing() {
    ChannelHeat channel = channel(Requests.classAb(30, 2, 4, 0, 0.1));
    assertEquals(6, channel.idle().heatW(), 1e-12); // 2·30·0.1
    assertEquals(0.1, channel.idle().railCurrentA(), 1e-12);
    double more = channel.sine().railPowerW() - channel(BY_HAND).sine().railPowerW();
    assertTrue(more > 0 && more < 0.5, () -> "more by " + more);
    assertTrue(channel.worstHeatW() > 45.595);
  }

  @Test
  void aSineOfTheQuiescentPeakGivesTheTabulatedEllipticIntegral() {
    // Peak 0.2 A and 2·Iq = 0.2 A: m = 1/2, E = 1.3506438810 (Abramowitz and Stegun, table 17.1,
    // typed from memory).
    double mean = MeanCurrent.sine(0.2 / Math.sqrt(2), 0.1);
    assertEquals(2 / Math.PI * 0.2 * Math.sqrt(2) * 1.3506438810, mean, 1e-10);
  }

  @Test
  void classAIsHottestWithoutSignalAndSaidToBe() {
    Answer<AmplifierHeatResult> answer =
        Requests.answer(Requests.of(Requests.classAb(30, 2, 8, 0, 5)));
    ChannelHeat channel = answer.result().channels().get(0);
    assertEquals(0, channel.worstSwingRatio(), 0);
    assertEquals(300, channel.worstHeatW(), 1e-9);
    assertEquals(List.of("quiescent-high"), Answers.codes(answer));
    assertEquals(1.75, answer.findings().get(0).limit(), 1e-12); // 28/8/2
  }

  @Test
  void classDLosesAFixedAndAResistivePart() {
    ChannelHeat channel = channel(Requests.classD(40, 4, 0, new ClassD(5.0, 0.2, null)));
    assertEquals(200, channel.sine().outputPowerW(), 1e-9);
    assertEquals(15, channel.sine().heatW(), 1e-9); // 5 + 0.2·50
    assertEquals(5, channel.idle().heatW(), 0);
    assertEquals(6.25, channel.musicEighth().heatW(), 1e-9); // an eighth of the 10 W
    assertEquals(1, channel.worstSwingRatio(), 0);
    assertEquals(15, channel.worstHeatW(), 1e-9);
    assertEquals(425, channel.peakRailPowerW(), 1e-9); // 400 + 5 + 0.2·100
  }

  @Test
  void classDByItsEfficiencyIsTheSame() {
    ChannelStage stated = Requests.classD(40, 4, 0, new ClassD(5.0, null, 200.0 / 215));
    assertEquals(15, channel(stated).sine().heatW(), 1e-9);
    ChannelStage reactive = Requests.classD(40, 4, 60, new ClassD(5.0, null, 200.0 / 215));
    assertEquals(15, channel(reactive).sine().heatW(), 1e-9);
    assertEquals(100, channel(reactive).sine().outputPowerW(), 1e-9);
  }

  @Test
  void noiseOfLowCrestIsSaidToBeClipped() {
    AmplifierHeatRequest request = Requests.standard(BY_HAND).noiseCrestFactorDb(6.0).build();
    assertEquals(List.of("noise-clipped"), Requests.codes(request));
    // A sine's crest apart, 12.04 dB below twice the full power is one eighth of it.
    double crest = 20 * Math.log10(4);
    AmplifierHeatRequest eighth = Requests.standard(BY_HAND).noiseCrestFactorDb(crest).build();
    ChannelHeat channel = Requests.result(eighth).channels().get(0);
    assertEquals(channel.musicEighth().railPowerW(), channel.noise().railPowerW(), 1e-9);
  }

  @Test
  void aSingleSupplyBridgeTakesItsCurrentFromOneRail() {
    ChannelStage headUnit = Requests.classB(Topology.SINGLE_SUPPLY_BRIDGE, 14.4, 2.4, 4);
    AmplifierHeatRequest request =
        Requests.standard(headUnit).supplyV(14.4).amplifier(Requests.converter(1, false)).build();
    ChannelHeat channel = Requests.result(request).channels().get(0);
    assertEquals(18, channel.fullPowerW(), 1e-9); // 12²/8
    assertEquals(6 / Math.PI, channel.sine().railCurrentA(), 1e-12);
    assertEquals(6 / Math.PI, channel.sine().batteryCurrentA(), 1e-12);
    assertEquals(List.of(), Requests.codes(request));
  }

  @Test
  void channelsAddUpByTheirCount() {
    AmplifierHeatResult one = Requests.result(Requests.of(BY_HAND));
    AmplifierHeatResult four = Requests.result(Requests.of(Requests.times(4, BY_HAND)));
    assertEquals(4 * 157.283, four.total().sine().batteryPowerW(), 2e-3);
    assertEquals(4 * one.total().worstStageHeatW(), four.total().worstStageHeatW(), 1e-9);
    assertEquals(
        one.channels().get(0).sine().batteryCurrentA(),
        four.channels().get(0).sine().batteryCurrentA(),
        1e-12);
  }

  @Test
  void aRegulatedSupplyDrawsMoreCurrentThroughACable() {
    TotalDraw sine = Requests.result(Requests.behind(0.01, true, BY_HAND)).total().sine();
    assertEquals(13.685, sine.terminalV(), 5e-4);
    assertEquals(11.493, sine.batteryCurrentA(), 5e-4);
    TotalDraw unregulated = Requests.result(Requests.behind(0.01, false, BY_HAND)).total().sine();
    assertEquals(11.397, unregulated.batteryCurrentA(), 5e-4);
    assertEquals(13.686, unregulated.terminalV(), 5e-4);
  }

  @Test
  void aLongWayToTheBatteryIsSaid() {
    ChannelStage four = Requests.times(4, BY_HAND);
    assertEquals(List.of("supply-sinks"), Requests.codes(Requests.behind(0.02, true, four)));
    Answer<AmplifierHeatResult> rails = Requests.answer(Requests.behind(0.02, false, four));
    assertEquals(List.of("rails-sink"), Answers.codes(rails));
    assertEquals(Verdict.WARNING, rails.verdict());
    assertEquals(12.888, rails.findings().get(0).value(), 5e-4); // 13.8 − 45.589·0.02
  }

  @Test
  void aConverterWithoutLossIsNotBelieved() {
    AmplifierHeatRequest request =
        Requests.standard(BY_HAND).amplifier(Requests.converter(1, false)).build();
    assertEquals(List.of("converter-optimistic"), Requests.codes(request));
  }

  @Test
  void workingsNameTheSignalOfEachLine() {
    var answer = Answers.withWorkings(new AmplifierHeat(), Requests.of(BY_HAND));
    double rail =
        answer.workings().stream()
            .filter(step -> step.quantity().equals("music_eighth_rail_power_w"))
            .findFirst()
            .orElseThrow()
            .value();
    assertEquals(41.889, rail, 5e-4);
  }

  @Test
  @SuppressWarnings("unchecked")
  void theExampleOfTheCardRunsAndIsFlat() throws JsonProcessingException {
    AmplifierHeat calculation = new AmplifierHeat();
    Map<String, Object> example =
        new ObjectMapper().readValue(calculation.card().example(), Map.class);
    Engine engine = new Engine();
    AmplifierHeatRequest request = engine.bind(AmplifierHeatRequest.class, example, false);
    var answer = engine.answer(calculation, request, false, Duration.ofSeconds(5));
    assertEquals(2, answer.result().channels().size());
    assertTrue(answer.result().total().musicEighth().batteryCurrentA() > 10);
    assertTrue(Shape.of(AmplifierHeatRequest.class).flat());
  }
}
