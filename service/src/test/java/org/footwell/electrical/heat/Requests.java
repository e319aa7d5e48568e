package org.footwell.electrical.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.electrical.heat.AmplifierHeatRequest.ChannelStage;
import org.footwell.electrical.heat.AmplifierHeatRequest.Topology;
import org.footwell.parts.Amplifier;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.ClassD;
import org.footwell.parts.OutputClass;

/** Shorthand for requests with little in them, and for what is answered. */
final class Requests {

  private Requests() {}

  private static AmplifierHeatRequestChannelStageBuilder channel(
      OutputClass type, double railV, double dropV, double loadOhm) {
    return AmplifierHeatRequestChannelStageBuilder.builder()
        .outputClass(type)
        .railV(railV)
        .dropV(dropV)
        .loadOhm(loadOhm);
  }

  static ChannelStage classB(double railV, double dropV, double loadOhm, double phaseDeg) {
    return channel(OutputClass.CLASS_B, railV, dropV, loadOhm).phaseDeg(phaseDeg).build();
  }

  static ChannelStage classB(Topology topology, double railV, double dropV, double loadOhm) {
    return channel(OutputClass.CLASS_B, railV, dropV, loadOhm).topology(topology).build();
  }

  static ChannelStage classAb(
      double railV, double dropV, double loadOhm, double phaseDeg, double quiescentA) {
    return channel(OutputClass.CLASS_AB, railV, dropV, loadOhm)
        .phaseDeg(phaseDeg)
        .quiescentCurrentA(quiescentA)
        .build();
  }

  static ChannelStage classD(double railV, double loadOhm, double phaseDeg, ClassD losses) {
    return channel(OutputClass.CLASS_D, railV, 0, loadOhm)
        .phaseDeg(phaseDeg)
        .classD(losses)
        .build();
  }

  static ChannelStage times(int count, ChannelStage channel) {
    return AmplifierHeatRequestChannelStageBuilder.builder(channel).channelCount(count).build();
  }

  static Amplifier converter(double efficiency, boolean regulated) {
    return AmplifierBuilder.builder()
        .converterEfficiency(efficiency)
        .supplyRegulated(regulated)
        .build();
  }

  /** At 13.8 V through a converter of 85 %. */
  static AmplifierHeatRequestBuilder standard(ChannelStage... channels) {
    return AmplifierHeatRequestBuilder.builder()
        .supplyV(13.8)
        .amplifier(converter(0.85, false))
        .channels(List.of(channels));
  }

  static AmplifierHeatRequest of(ChannelStage... channels) {
    return swing(1, channels);
  }

  static AmplifierHeatRequest swing(double sineSwing, ChannelStage... channels) {
    return standard(channels).sineSwingRatio(sineSwing).build();
  }

  static AmplifierHeatRequest behind(double cableOhm, boolean regulated, ChannelStage... channels) {
    return standard(channels)
        .amplifier(converter(0.85, regulated))
        .supplyCableOhm(cableOhm)
        .build();
  }

  static Answer<AmplifierHeatResult> answer(AmplifierHeatRequest request) {
    return Answers.of(new AmplifierHeat(), request);
  }

  static AmplifierHeatResult result(AmplifierHeatRequest request) {
    return answer(request).result();
  }

  static List<String> codes(AmplifierHeatRequest request) {
    return Answers.codes(answer(request));
  }

  static Fault onlyFault(AmplifierHeatRequest request) {
    List<Fault> faults = Answers.faults(new AmplifierHeat(), request);
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }
}
