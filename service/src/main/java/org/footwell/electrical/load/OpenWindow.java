package org.footwell.electrical.load;

import static org.footwell.electrical.load.OptionsFault.WINDOW_EMPTY;

import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.parts.Amplifier;

/** Some load is both borne and wanted. */
@Check.Of(
    value = {"amplifier.minimum_ohm", "amplifier.minimum_bridged_ohm", "bridged", "maximum_ohm"},
    says =
        "amplifier.minimum_ohm is required, or bridged amplifier.minimum_bridged_ohm; maximum_ohm is"
            + " not below the smallest load as connected.")
final class OpenWindow implements Check<WiringOptionsRequest> {

  @Override
  public void check(WiringOptionsRequest q, Refusing to) {
    Double smallest = smallestOhm(q.amplifier(), q.bridged());
    if (smallest == null) {
      to.refuse(CoreFault.REQUIRED).at("/amplifier/minimum_ohm");
    } else if (q.maximumOhm() != null && q.maximumOhm() < smallest) {
      to.refuse(WINDOW_EMPTY)
          .at("/maximum_ohm")
          .given(q.maximumOhm())
          .allowed(Allowed.atLeast(smallest, "ohm"));
    }
  }

  /** Each channel of a bridge sees half of its load. */
  private static Double smallestOhm(Amplifier amplifier, boolean bridged) {
    if (bridged && amplifier.minimumBridgedOhm() != null) {
      return amplifier.minimumBridgedOhm();
    }
    Double one = amplifier.minimumOhm();
    return one == null || !bridged ? one : (Double) (2 * one);
  }
}
