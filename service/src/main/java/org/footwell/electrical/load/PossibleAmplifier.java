package org.footwell.electrical.load;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.electrical.amplifier.StatedAmplifier;

/** An amplifier that can be, connected so. */
@Check.Of(
    value = {"amplifier.rails", "amplifier.ratings", "amplifier.supply_regulated", "bridged"},
    says =
        "What is a bridge already is not bridged; ratings are for loads that differ, and such as the"
            + " supply can give.")
final class PossibleAmplifier implements Check<WiringOptionsRequest> {

  @Override
  public void check(WiringOptionsRequest q, Refusing to) {
    // That there are both rails and ratings is told by the rule.
    if (q.amplifier().rails() == null || q.amplifier().ratings() == null) {
      StatedAmplifier.check(q.amplifier(), q.bridged(), "/amplifier", to);
    }
  }
}
