package org.footwell.electrical.amplifier;

import java.util.Arrays;
import java.util.List;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.BridgedRatings;
import org.footwell.parts.Ratings;

/** A request to be changed: published powers, and the loads to predict for. */
final class RatedRequest {

  private final AmplifierBuilder amplifier = AmplifierBuilder.builder();
  private final AmplifierRatingsRequestBuilder use = AmplifierRatingsRequestBuilder.builder();

  RatedRequest(Ratings ratings, double... loads) {
    amplifier.ratings(ratings);
    use.loadsOhm(Arrays.stream(loads).boxed().toList());
  }

  RatedRequest bridgedRatings(BridgedRatings bridged) {
    amplifier.bridgedRatings(bridged);
    return this;
  }

  RatedRequest supplyRegulated(boolean regulated) {
    amplifier.supplyRegulated(regulated);
    return this;
  }

  RatedRequest suppliesV(List<Double> supplies) {
    use.suppliesV(supplies);
    return this;
  }

  RatedRequest loadsOhm(List<Double> loads) {
    use.loadsOhm(loads);
    return this;
  }

  AmplifierRatingsRequest build() {
    return use.amplifier(amplifier.build()).build();
  }
}
