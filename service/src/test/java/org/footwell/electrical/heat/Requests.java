package org.footwell.electrical.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.electrical.heat.AmplifierHeatRequest.Channel;
import org.footwell.electrical.heat.AmplifierHeatRequest.ClassD;
import org.footwell.electrical.heat.AmplifierHeatRequest.OutputClass;
import org.footwell.electrical.heat.AmplifierHeatRequest.Topology;

/** Shorthand for requests with little in them, and for what is answered. */
final class Requests {

  private Requests() {}

  static Channel classB(double railV, double dropV, double loadOhm, double phaseDeg) {
    return AmplifierHeatRequestChannelBuilder.builder()
        .outputClass(OutputClass.CLASS_B)
        .railV(railV)
        .dropV(dropV)
        .loadOhm(loadOhm)
        .phaseDeg(phaseDeg)
        .build();
  }

  static Channel classB(Topology topology, double railV, double dropV, double loadOhm) {
    return AmplifierHeatRequestChannelBuilder.builder()
        .outputClass(OutputClass.CLASS_B)
        .topology(topology)
        .railV(railV)
        .dropV(dropV)
        .loadOhm(loadOhm)
        .build();
  }

  static Channel classAb(
      double railV, double dropV, double loadOhm, double phaseDeg, double quiescentA) {
    return AmplifierHeatRequestChannelBuilder.builder()
        .outputClass(OutputClass.CLASS_AB)
        .railV(railV)
        .dropV(dropV)
        .loadOhm(loadOhm)
        .phaseDeg(phaseDeg)
        .quiescentCurrentA(quiescentA)
        .build();
  }

  static Channel classD(double railV, double loadOhm, double phaseDeg, ClassD losses) {
    return AmplifierHeatRequestChannelBuilder.builder()
        .outputClass(OutputClass.CLASS_D)
        .railV(railV)
        .dropV(0.0)
        .loadOhm(loadOhm)
        .phaseDeg(phaseDeg)
        .classD(losses)
        .build();
  }

  static Channel times(int count, Channel c) {
    return AmplifierHeatRequestChannelBuilder.builder()
        .name(c.name())
        .channelCount(count)
        .outputClass(c.outputClass())
        .topology(c.topology())
        .railV(c.railV())
        .dropV(c.dropV())
        .loadOhm(c.loadOhm())
        .phaseDeg(c.phaseDeg())
        .quiescentCurrentA(c.quiescentCurrentA())
        .classD(c.classD())
        .build();
  }

  /** At 13.8 V through a converter of 85 %. */
  static AmplifierHeatRequest of(Channel... channels) {
    return swing(1, channels);
  }

  static AmplifierHeatRequest swing(double sineSwing, Channel... channels) {
    return new AmplifierHeatRequest(13.8, 0.85, null, null, null, sineSwing, List.of(channels));
  }

  static AmplifierHeatRequest behind(double cableOhm, boolean regulated, Channel... channels) {
    return new AmplifierHeatRequest(13.8, 0.85, regulated, cableOhm, null, null, List.of(channels));
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
