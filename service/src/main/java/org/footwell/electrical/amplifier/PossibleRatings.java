package org.footwell.electrical.amplifier;

import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.BridgedRatings;
import org.footwell.parts.Ratings;

/** Ratings of an amplifier that can be. */
@Check.Of(
    value = {"amplifier.ratings", "amplifier.bridged_ratings"},
    says =
        "Ratings are for loads that differ, and such as the supply can give; those beside"
            + " amplifier.bridged_ratings are of one channel, which is not a bridge already.")
final class PossibleRatings implements Check<AmplifierRatingsRequest> {

  @Override
  public void check(AmplifierRatingsRequest q, Refusing to) {
    Ratings ratings = q.amplifier().ratings();
    BridgedRatings bridged = q.amplifier().bridgedRatings();
    RatingRules.refuseImpossible(ratings, ratings.bridged(), "/amplifier/ratings", to);
    if (bridged == null) {
      return;
    }
    if (ratings.bridged()) {
      to.refuse(CoreFault.NOT_ALLOWED)
          .at("/amplifier/ratings/bridged")
          .given(true)
          .allowed(Phrase.of(LoadWords.SINGLE_BESIDE_BRIDGED));
    }
    if (ratings.singleSupplyBridge()) {
      to.refuse(AmplifierFault.BRIDGE_OF_BRIDGES)
          .at("/amplifier/bridged_ratings")
          .given(Phrase.of(LoadWords.BRIDGED_RATINGS))
          .allowed(Allowed.leftOutBeside("single_supply_bridge"));
    }
    // A single rating, or several for the same load, have no source of their own.
    Ratings pair = bridged.beside(ratings);
    if (RatingsFit.spread(RatedAmplifier.connected(pair, true))) {
      RatingRules.refuseImpossible(pair, true, BridgedPair.AT, to);
    }
  }
}
