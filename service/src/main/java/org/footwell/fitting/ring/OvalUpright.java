package org.footwell.fitting.ring;

import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Phrase;
import org.footwell.fitting.ring.AdapterRingRequest.FittedDriver;

/** The axes of an oval driver stay across and up. */
@Check.Of(
    value = {"frame", "cut_out", "turned_deg"},
    says = "turned_deg of an oval driver is a multiple of 180.")
final class OvalUpright implements Check<FittedDriver> {

  @Override
  public void check(FittedDriver driver, Refusing to) {
    if (driver.turnedDeg() == null || !driver.frame().clear() || !driver.cutOut().clear()) {
      return;
    }
    boolean round = driver.frame().oval().circular() && driver.cutOut().oval().circular();
    if (!round && driver.turnedDeg() % 180 != 0) {
      to.refuse(CoreFault.NOT_ALLOWED)
          .at("/turned_deg")
          .given(driver.turnedDeg())
          .allowed(Phrase.of(RingWords.OVAL_TURN));
    }
  }
}
