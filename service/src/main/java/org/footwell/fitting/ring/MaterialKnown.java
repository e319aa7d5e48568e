package org.footwell.fitting.ring;

import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.fitting.ring.AdapterRingRequest.RingMaking;

/** Of a material that is not listed its figures are given. */
@Check.Of(
    value = {"material", "density_kg_per_m3", "softening_c"},
    says = "density_kg_per_m3 and softening_c are given with the material other.")
final class MaterialKnown implements Check<RingMaking> {

  @Override
  public void check(RingMaking ring, Refusing to) {
    if (ring.densityKgPerM3() == null) {
      to.refuse(CoreFault.REQUIRED).at("/density_kg_per_m3");
    }
    if (ring.material() == RingMaterial.OTHER && ring.softeningC() == null) {
      to.refuse(CoreFault.REQUIRED).at("/softening_c");
    }
  }
}
