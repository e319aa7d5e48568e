package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.NetworkFault.COIL_RESISTANCE_WITHOUT_COIL;
import static org.footwell.electrical.passive.NetworkFault.ELEMENT_EMPTY;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.parts.LadderElement;

/** What an element of a ladder must be made of. */
@Check.Of(
    value = {"capacitance_uf", "inductance_mh", "resistance_ohm", "coil_ohm"},
    says =
        "capacitance_uf, inductance_mh or resistance_ohm is required; coil_ohm is that of an"
            + " inductance_mh.")
final class PartsOfElement implements Check<LadderElement> {

  @Override
  public void check(LadderElement element, Refusing to) {
    if (element.empty()) {
      to.refuse(ELEMENT_EMPTY)
          .allowed(Allowed.fields(List.of("capacitance_uf", "inductance_mh", "resistance_ohm")));
    } else if (element.inductanceMh() == null && element.coilOhm() > 0) {
      to.refuse(COIL_RESISTANCE_WITHOUT_COIL).at("/coil_ohm").given(element.coilOhm());
    }
  }
}
