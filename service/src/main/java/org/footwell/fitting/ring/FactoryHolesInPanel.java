package org.footwell.fitting.ring;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Phrase;
import org.footwell.fitting.ring.AdapterRingRequest.Opening;
import org.footwell.fitting.ring.MountingHoles.HolePosition;
import org.footwell.fitting.ring.drawing.Oval;

/** Factory holes are in what was left of the panel, each for itself. */
@Check.Of(
    value = {"opening.cut_out", "opening.holes", "ring.factory_hole_mm"},
    says =
        "The centres of opening.holes are outside opening.cut_out and more than ring.factory_hole_mm"
            + " apart.")
final class FactoryHolesInPanel implements Check<AdapterRingRequest> {

  private static final String AT = "/opening/holes";

  @Override
  public void check(AdapterRingRequest q, Refusing to) {
    Opening opening = q.opening();
    if (!opening.holes().clear()) {
      return;
    }
    if (opening.cutOut().clear()) {
      outside(opening.cutOut().oval(), opening.holes(), to);
    }
    RingSizes.apart(AT, opening.holes(), q.ring().factoryHoleMm(), to);
  }

  private static void outside(Oval cutOut, MountingHoles holes, Refusing to) {
    List<HolePosition> centres = holes.centres();
    for (int i = 0; i < centres.size(); i++) {
      if (cutOut.inside(centres.get(i).xMm(), centres.get(i).yMm()) >= 0) {
        to.refuse(RingFault.FACTORY_HOLE_IN_CUT_OUT)
            .at(AT + holes.pointer(i))
            .given(RingSizes.spoken(centres.get(i)))
            .allowed(Phrase.of(RingWords.OUTSIDE_CUT_OUT));
        if (holes.boltCircle() != null) {
          return;
        }
      }
    }
  }
}
