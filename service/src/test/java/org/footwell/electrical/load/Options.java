package org.footwell.electrical.load;

import java.util.Arrays;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.electrical.amplifier.DescribedAmplifier;
import org.footwell.electrical.amplifier.Rails;
import org.footwell.electrical.amplifier.Ratings;
import org.footwell.electrical.load.WiringLoadRequest.Coil;
import org.footwell.electrical.load.WiringOptionsRequest.Coils;
import org.footwell.electrical.load.WiringOptionsRequest.Window;
import org.footwell.electrical.load.WiringOptionsResult.Option;

/** Shorthand for requests for the ways to wire coils, and for what is answered. */
final class Options {

  /** 100 W into 4 ohm and 160 W into 2 ohm, clean at 14.4 V. */
  static final DescribedAmplifier RATED =
      rated(new Ratings.Point(4.0, 100.0), new Ratings.Point(2.0, 160.0));

  private Options() {}

  static DescribedAmplifier rated(Ratings.Point... points) {
    return new DescribedAmplifier(
        null, new Ratings(14.4, Ratings.Basis.CLEAN, Arrays.asList(points), null, null));
  }

  static DescribedAmplifier onRails(double railV, Double currentLimitA) {
    return new DescribedAmplifier(new Rails(railV, 14.4, null, 2.0, currentLimitA, null), null);
  }

  static Coils coils(String name, double ratedOhm, int count) {
    return new Coils(name, ratedOhm, count);
  }

  /** A window without an upper end. */
  static Window from(double minimumOhm) {
    return new Window(minimumOhm, null, null);
  }

  static WiringOptionsRequest of(List<Double> ratedOhms, double minimumOhm) {
    List<Coils> coils = ratedOhms.stream().map(ohm -> new Coils(null, ohm, null)).toList();
    return WiringOptionsRequestBuilder.builder()
        .coils(coils)
        .window(from(minimumOhm))
        .listCount(100)
        .build();
  }

  static WiringOptionsRequest of(
      double minimumOhm, Double maximumOhm, DescribedAmplifier amplifier, Coils... coils) {
    return WiringOptionsRequestBuilder.builder()
        .coils(Arrays.asList(coils))
        .window(new Window(minimumOhm, null, maximumOhm))
        .amplifier(amplifier)
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
  static Coil[] fedBack(Option option) {
    return option.coils().stream()
        .filter(coil -> !coil.name().startsWith("coil "))
        .map(coil -> Requests.coil(coil.name(), coil.ratedOhm()))
        .toArray(Coil[]::new);
  }
}
