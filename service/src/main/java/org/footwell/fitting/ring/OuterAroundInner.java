package org.footwell.fitting.ring;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.fitting.ring.drawing.Oval;

/** A ring has a face. */
@Check.Of(
    value = {"driver.cut_out", "ring.basket_clearance_mm", "ring.outer"},
    says =
        "ring.outer is larger on both axes than driver.cut_out with ring.basket_clearance_mm on each"
            + " side.")
final class OuterAroundInner implements Check<AdapterRingRequest> {

  @Override
  public void check(AdapterRingRequest q, Refusing to) {
    Outline outer = q.ring().outer();
    if (outer == null || !outer.clear() || !q.driver().cutOut().clear()) {
      return;
    }
    Oval inner = AdapterRing.inner(q);
    if (outer.oval().beyond(inner) <= 0) {
      to.refuse(RingFault.OUTER_WITHIN_INNER)
          .at("/ring/outer")
          .given(RingSizes.spoken(outer.oval()))
          .allowed(RingSizes.moreThan(inner));
    }
  }
}
