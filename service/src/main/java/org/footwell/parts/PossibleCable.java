package org.footwell.parts;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;

/** A conductivity that the material of a cable can have. */
@Check.Of(
    value = {"material", "conductivity"},
    says = "conductivity is one that the material can have.")
public final class PossibleCable implements Check<Cable> {

  @Override
  public void check(Cable cable, Refusing to) {
    ConductorMaterial of = cable.material();
    if (of != null && (cable.conductivity() < of.least() || cable.conductivity() > of.most())) {
      to.refuse(ConductorFault.CONDUCTIVITY_NOT_OF_MATERIAL)
          .at("/conductivity")
          .given(cable.conductivity())
          .allowed(Allowed.range(of.least(), of.most(), ""))
          .with("material", of);
    }
  }
}
