package org.footwell.acoustic.enclosure;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** A box of a known volume is tuned by its port. */
@Check.Of(
    value = {"box.volume_l", "box.fb_hz", "port.length_mm"},
    says = "Exactly one of box.fb_hz and port.length_mm where box.volume_l is given.")
final class TunedOnce implements Check<VentedBoxRequest> {

  @Override
  public void check(VentedBoxRequest q, Refusing to) {
    if (q.box().volumeL() != null && q.box().fbHz() == null) {
      to.exactlyOneOf("", "box.fb_hz", null, "port.length_mm", q.port().lengthMm());
    }
  }
}
