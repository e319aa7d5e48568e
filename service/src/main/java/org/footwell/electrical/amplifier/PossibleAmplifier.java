package org.footwell.electrical.amplifier;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.parts.Amplifier;

/** An amplifier that can be, connected so. */
@Check.Of(
    value = {"amplifier.rails", "amplifier.ratings", "bridged"},
    says =
        "What is a bridge already is not bridged; ratings are for loads that differ, and such as the"
            + " supply can give.")
final class PossibleAmplifier implements Check<ConnectedAmplifier> {

  @Override
  public void check(ConnectedAmplifier q, Refusing to) {
    Amplifier amplifier = q.amplifier();
    if (amplifier.rails() != null && amplifier.ratings() != null) {
      return; // told by the rule
    }
    if (amplifier.rails() != null) {
      RatingRules.refuseBridging(amplifier.rails(), q.bridged(), to);
    } else if (amplifier.ratings() != null) {
      RatingRules.refuseBridging(amplifier.ratings(), q.bridged(), to);
      RatingRules.refuseImpossible(amplifier.ratings(), q.bridged(), "/amplifier/ratings", to);
    }
  }
}
