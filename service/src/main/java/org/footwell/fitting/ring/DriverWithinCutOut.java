package org.footwell.fitting.ring;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.fitting.ring.AdapterRingRequest.FittedDriver;
import org.footwell.fitting.ring.drawing.Millimetres;
import org.footwell.fitting.ring.drawing.Oval;

/** A driver goes in through its own cut-out, which magnet and basket may just fill. */
@Check.Of(
    value = {"frame", "cut_out", "magnet_diameter_mm", "basket_diameter_mm"},
    says =
        "cut_out is smaller than frame on both axes; magnet_diameter_mm and basket_diameter_mm are at"
            + " most those of cut_out.")
final class DriverWithinCutOut implements Check<FittedDriver> {

  @Override
  public void check(FittedDriver driver, Refusing to) {
    if (!driver.cutOut().clear()) {
      return;
    }
    Oval cutOut = driver.cutOut().oval();
    if (driver.frame().clear()) {
      RingSizes.inside("/cut_out", cutOut, RingWords.FRAME, driver.frame().oval(), to);
    }
    inside("/magnet_diameter_mm", driver.magnetDiameterMm(), cutOut, to);
    inside("/basket_diameter_mm", driver.basketDiameterMm(), cutOut, to);
  }

  private static void inside(String at, Double diameter, Oval cutOut, Refusing to) {
    if (diameter != null && cutOut.beyond(Oval.round(diameter)) < 0) {
      to.refuse(RingFault.NOT_INSIDE)
          .at(at)
          .given(Millimetres.text(diameter) + " mm")
          .with("outer", RingWords.DRIVER_CUT_OUT)
          .allowed(Allowed.atMost(Math.min(cutOut.widthMm(), cutOut.heightMm()), "mm"));
    }
  }
}
