package org.footwell.electrical.load;

import java.util.Arrays;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.footwell.electrical.load.WiringLoadRequest.Amplifier;
import org.footwell.electrical.load.WiringLoadRequest.Cable;
import org.footwell.electrical.load.WiringLoadRequest.Coil;

/** Shorthand for requests with little in them. */
final class Requests {

  private Requests() {}

  static WiringLoadRequest network(String network, Coil... coils) {
    List<Coil> listed = coils.length == 0 ? null : Arrays.asList(coils);
    return WiringLoadRequestBuilder.builder().network(network).coils(listed).build();
  }

  static WiringLoadRequest on(Amplifier amplifier, String network) {
    return WiringLoadRequestBuilder.builder().network(network).amplifier(amplifier).build();
  }

  static WiringLoadRequest through(Cable cable, String network) {
    return WiringLoadRequestBuilder.builder().network(network).cable(cable).build();
  }

  private static WiringLoadRequestCoilBuilder named(String name, double ratedOhm) {
    return WiringLoadRequestCoilBuilder.builder().name(name).ratedOhm(ratedOhm);
  }

  static Coil coil(String name, double ratedOhm) {
    return named(name, ratedOhm).build();
  }

  static Coil measured(String name, double ratedOhm, double reOhm) {
    return named(name, ratedOhm).reOhm(reOhm).build();
  }

  static Coil ofDriver(String driver, String name, double ratedOhm) {
    return named(name, ratedOhm).driver(driver).build();
  }

  static Coil inBand(String band, String name, double ratedOhm) {
    return named(name, ratedOhm).band(band).build();
  }

  static Amplifier minimum(double minimumOhm) {
    return WiringLoadRequestAmplifierBuilder.builder().minimumOhm(minimumOhm).build();
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
