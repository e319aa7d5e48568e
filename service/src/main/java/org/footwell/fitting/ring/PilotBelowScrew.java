package org.footwell.fitting.ring;

import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.fitting.ring.AdapterRingRequest.RingMaking;

/** A screw bites into its hole. */
@Check.Of(
    value = {"material", "pilot_mm", "screw_mm"},
    says = "pilot_mm is below screw_mm.")
final class PilotBelowScrew implements Check<RingMaking> {

  @Override
  public void check(RingMaking ring, Refusing to) {
    if (ring.pilotMm() >= ring.screwMm()) {
      to.refuse(CoreFault.NOT_ALLOWED)
          .at("/pilot_mm")
          .given(ring.pilotMm())
          .allowed(Allowed.below(ring.screwMm(), "mm"));
    }
  }
}
