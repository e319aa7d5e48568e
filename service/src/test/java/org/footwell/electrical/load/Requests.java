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
    return new WiringLoadRequest(network, listed, null, null, null);
  }

  static WiringLoadRequest on(Amplifier amplifier, String network) {
    return new WiringLoadRequest(network, null, amplifier, null, null);
  }

  static WiringLoadRequest through(Cable cable, String network) {
    return new WiringLoadRequest(network, null, null, cable, null);
  }

  static Coil coil(String name, double ratedOhm) {
    return new Coil(name, ratedOhm, null, null, null);
  }

  static Coil measured(String name, double ratedOhm, double reOhm) {
    return new Coil(name, ratedOhm, reOhm, null, null);
  }

  static Coil ofDriver(String driver, String name, double ratedOhm) {
    return new Coil(name, ratedOhm, null, driver, null);
  }

  static Coil inBand(String band, String name, double ratedOhm) {
    return new Coil(name, ratedOhm, null, null, band);
  }

  static Amplifier minimum(double minimumOhm) {
    return new Amplifier(minimumOhm, null, null, null);
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
        .map(Finding::text)
        .findFirst()
        .orElseThrow();
  }
}
