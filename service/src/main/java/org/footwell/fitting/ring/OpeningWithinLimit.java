package org.footwell.fitting.ring;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.fitting.ring.AdapterRingRequest.Opening;

/** There is a panel around its cut-out. */
@Check.Of(
    value = {"cut_out", "limit"},
    says = "cut_out is smaller than limit on both axes.")
final class OpeningWithinLimit implements Check<Opening> {

  @Override
  public void check(Opening opening, Refusing to) {
    if (opening.limit() != null && opening.cutOut().clear() && opening.limit().clear()) {
      RingSizes.inside(
          "/cut_out", opening.cutOut().oval(), RingWords.PANEL_LIMIT, opening.limit().oval(), to);
    }
  }
}
