package org.footwell.electrical.amplifier;

import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.Rails;
import org.footwell.parts.Ratings;
import org.footwell.parts.Ratings.Basis;
import org.footwell.parts.Ratings.Point;

/** Refuses amplifiers that contradict themselves. */
final class RatingRules {

  /** Published powers are rounded: this much above the impossible is let pass. */
  static final double ROUNDED = 1.01;

  private RatingRules() {}

  /** Refuses to bridge what is a bridge already; the request says so at {@code /bridged}. */
  static void refuseBridging(Ratings ratings, boolean bridged, Refusing to) {
    refuseBridging(bridged && ratings.singleSupplyBridge(), "/bridged", to);
  }

  /** The same of rails. */
  static void refuseBridging(Rails rails, boolean bridged, Refusing to) {
    refuseBridging(bridged && rails.kind() == Rails.Kind.SINGLE_SUPPLY_BRIDGE, "/bridged", to);
  }

  private static boolean refuseBridging(boolean ofBridges, String at, Refusing to) {
    if (ofBridges) {
      to.refuse(AmplifierFault.BRIDGE_OF_BRIDGES).at(at).given(true).allowed(Allowed.only(false));
    }
    return ofBridges;
  }

  /**
   * Refuses ratings that contradict each other or their supply.
   *
   * @param at JSON Pointer to the ratings
   */
  static void refuseImpossible(Ratings ratings, boolean bridged, String at, Refusing to) {
    boolean single = ratings.singleSupplyBridge();
    boolean possible = !refuseBridging(single && ratings.bridged(), at + "/bridged", to);
    if (!RatingsFit.spread(RatedAmplifier.connected(ratings, bridged))) {
      to.refuse(AmplifierFault.LOADS_WITHOUT_SPREAD)
          .at(at + "/points")
          .allowed(Phrase.of(LoadWords.SPREAD));
      possible = false;
    }
    for (int i = 0; single && i < ratings.points().size(); i++) {
      Point point = ratings.points().get(i);
      double sine = RatedAmplifier.BRIDGE_LIMIT.at(ratings.supplyV(), point.loadOhm());
      double square = Basis.SQUARE_WAVE.timesClean() * sine;
      if (point.powerW() > ROUNDED * square) {
        to.refuse(AmplifierFault.RATING_IMPOSSIBLE)
            .at(at + "/points/" + i + "/power_w")
            .given(point.powerW())
            .allowed(Phrase.of(LoadWords.SQUARE_WAVE).with("power", square));
        possible = false;
      }
    }
    if (possible) {
      refuseSag(RatingsFit.of(RatedAmplifier.connected(ratings, bridged)), at, to);
    }
  }

  private static void refuseSag(RatingsFit fit, String at, Refusing to) {
    if (fit.sagGrosslyNegative()) {
      to.refuse(AmplifierFault.SAG_GROSSLY_NEGATIVE)
          .at(at + "/points")
          .given(Phrase.of(LoadWords.OHM_OF_SAG).with("sag", fit.sagOhm()))
          .allowed(Phrase.of(LoadWords.TWICE_INTO_HALF));
    }
  }
}
