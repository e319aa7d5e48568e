package org.footwell.electrical.supply;

import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.Cable;

/** A cable as thin as its current can be told for. */
@Check.Of(value = "area_mm2", says = "area_mm2 is at least that of the smallest installed size.")
final class InstalledSize implements Check<Cable> {

  private static final Phrase SIZES =
      Phrase.of(SupplyWords.INSTALLED_SIZES).own("least", Double.toString(Ampacity.SMALLEST_MM2));

  @Override
  public void check(Cable cable, Refusing to) {
    if (cable.areaMm2() != null && cable.areaMm2() < Ampacity.SMALLEST_MM2) {
      to.refuse(CoreFault.NOT_ALLOWED).at("/area_mm2").given(cable.areaMm2()).allowed(SIZES);
    }
  }
}
