package org.footwell.electrical.load;

import java.util.Arrays;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.electrical.load.WiringOptionsResult.Option;
import org.footwell.parts.Amplifier;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.Rails;
import org.footwell.parts.Ratings;
import org.footwell.parts.VoiceCoil;
import org.footwell.parts.VoiceCoilBuilder;

/** Shorthand for requests for the ways to wire coils, and for what is answered. */
final class Options {

  /** 100 W into 4 ohm and 160 W into 2 ohm, clean at 14.4 V. */
  static final Amplifier RATED =
      rated(new Ratings.Point(4.0, 100.0), new Ratings.Point(2.0, 160.0));

  private Options() {}

  static Amplifier rated(Ratings.Point... points) {
    return AmplifierBuilder.builder()
        .ratings(new Ratings(14.4, Ratings.Basis.CLEAN, Arrays.asList(points), null, null))
        .build();
  }

  static Amplifier onRails(double railV, Double currentLimitA) {
    return AmplifierBuilder.builder()
        .rails(new Rails(railV, 14.4, null, 2.0, currentLimitA, null))
        .build();
  }

  static VoiceCoil coils(String name, double ratedOhm, int count) {
    return VoiceCoilBuilder.builder().name(name).ratedOhm(ratedOhm).coilCount(count).build();
  }

  /** An amplifier of which only the smallest load is known. */
  static Amplifier from(double minimumOhm) {
    return Requests.minimum(minimumOhm);
  }

  static WiringOptionsRequest of(List<Double> ratedOhms, double minimumOhm) {
    List<VoiceCoil> coils = ratedOhms.stream().map(ohm -> coils(null, ohm, 1)).toList();
    return WiringOptionsRequestBuilder.builder()
        .coils(coils)
        .amplifier(from(minimumOhm))
        .listCount(100)
        .build();
  }

  static WiringOptionsRequest of(
      double minimumOhm, Double maximumOhm, Amplifier amplifier, VoiceCoil... coils) {
    return WiringOptionsRequestBuilder.builder()
        .coils(Arrays.asList(coils))
        .amplifier(
            (amplifier == null ? AmplifierBuilder.builder() : AmplifierBuilder.builder(amplifier))
                .minimumOhm(minimumOhm)
                .build())
        .maximumOhm(maximumOhm)
        .listCount(100)
        .build();
  }

  static Answer<WiringOptionsResult> answer(WiringOptionsRequest request) {
    return Answers.of(new WiringOptions(), request);
  }

  static List<String> networks(WiringOptionsRequest request) {
    return answer(request).result().options().stream().map(Option::network).toList();
  }

  /** What the coils of an option are to the calculation of a load. */
  static VoiceCoil[] fedBack(Option option) {
    return option.coils().stream()
        .filter(coil -> !coil.name().startsWith("coil "))
        .map(coil -> Requests.coil(coil.name(), coil.ratedOhm()))
        .toArray(VoiceCoil[]::new);
  }
}
