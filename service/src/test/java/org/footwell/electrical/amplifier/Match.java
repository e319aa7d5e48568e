package org.footwell.electrical.amplifier;

import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.Driver;
import org.footwell.parts.Rails;
import org.footwell.parts.Ratings;

/** A request to be changed: an amplifier on a load. */
final class Match {

  private final AmplifierBuilder amplifier = AmplifierBuilder.builder();
  private final RailMatchRequestBuilder use = RailMatchRequestBuilder.builder();

  Match loadOhm(double ohm) {
    use.loadOhm(ohm);
    return this;
  }

  Match rails(Rails rails) {
    amplifier.rails(rails);
    return this;
  }

  Match ratings(Ratings ratings) {
    amplifier.ratings(ratings);
    return this;
  }

  Match minimumOhm(Double ohm) {
    amplifier.minimumOhm(ohm);
    return this;
  }

  Match minimumBridgedOhm(double ohm) {
    amplifier.minimumBridgedOhm(ohm);
    return this;
  }

  Match supplyRegulated(boolean regulated) {
    amplifier.supplyRegulated(regulated);
    return this;
  }

  Match bridged(boolean bridged) {
    use.bridged(bridged);
    return this;
  }

  Match driver(Driver driver) {
    use.driver(driver);
    return this;
  }

  Match supplyV(double volt) {
    use.supplyV(volt);
    return this;
  }

  RailMatchRequest build() {
    return use.amplifier(amplifier.build()).build();
  }
}
