package org.footwell.electrical.load;

import java.util.Arrays;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.footwell.parts.Amplifier;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.Cable;
import org.footwell.parts.CableBuilder;
import org.footwell.parts.VoiceCoil;
import org.footwell.parts.VoiceCoilBuilder;

/** Shorthand for requests with little in them. */
final class Requests {

  private Requests() {}

  static WiringLoadRequest network(String network, VoiceCoil... coils) {
    List<VoiceCoil> listed = coils.length == 0 ? null : Arrays.asList(coils);
    return WiringLoadRequestBuilder.builder().network(network).coils(listed).build();
  }

  static WiringLoadRequest on(Amplifier amplifier, String network) {
    return WiringLoadRequestBuilder.builder().network(network).amplifier(amplifier).build();
  }

  /** Two channels bridged. */
  static WiringLoadRequest across(Amplifier amplifier, String network) {
    return WiringLoadRequestBuilder.builder()
        .network(network)
        .amplifier(amplifier)
        .bridged(true)
        .build();
  }

  static Cable cable(double oneWayM, double areaMm2, Double conductorTemperatureC) {
    return CableBuilder.builder()
        .oneWayM(oneWayM)
        .areaMm2(areaMm2)
        .conductorTemperatureC(conductorTemperatureC)
        .build();
  }

  static Amplifier bears(Double minimumOhm, Double minimumBridgedOhm) {
    return AmplifierBuilder.builder()
        .minimumOhm(minimumOhm)
        .minimumBridgedOhm(minimumBridgedOhm)
        .build();
  }

  static WiringLoadRequest through(Cable cable, String network) {
    return WiringLoadRequestBuilder.builder().network(network).cable(cable).build();
  }

  private static VoiceCoilBuilder named(String name, double ratedOhm) {
    return VoiceCoilBuilder.builder().name(name).ratedOhm(ratedOhm);
  }

  static VoiceCoil coil(String name, double ratedOhm) {
    return named(name, ratedOhm).build();
  }

  static VoiceCoil measured(String name, double ratedOhm, double reOhm) {
    return named(name, ratedOhm).reOhm(reOhm).build();
  }

  static VoiceCoil ofDriver(String driver, String name, double ratedOhm) {
    return named(name, ratedOhm).driver(driver).build();
  }

  static VoiceCoil inBand(String band, String name, double ratedOhm) {
    return named(name, ratedOhm).band(band).build();
  }

  static Amplifier minimum(double minimumOhm) {
    return AmplifierBuilder.builder().minimumOhm(minimumOhm).build();
  }

  static Answer<WiringLoadResult> answer(WiringLoadRequest request) {
    return Answers.of(new WiringLoad(), request);
  }

  static WiringLoadResult result(WiringLoadRequest request) {
    return answer(request).result();
  }

  static String sentence(Answer<?> answer, String code) {
    return answer.findings().stream()
        .filter(finding -> finding.code().equals(code))
        .map(Finding::inFull)
        .findFirst()
        .orElseThrow();
  }
}
