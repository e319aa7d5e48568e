package org.footwell.measured.arrival;

import static org.footwell.measured.arrival.ArrivalFault.BAND_TOO_NARROW;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.measured.arrival.ArrivalTimesRequest.Band;

/** A band narrower than this leaves nothing to judge an arrival by. */
@Check.Of(
    value = {"low_hz", "high_hz"},
    says = "high_hz is at least 1.25 times low_hz.")
final class WideEnough implements Check<Band> {

  private static final double NARROWEST = 1.25;

  @Override
  public void check(Band band, Refusing to) {
    if (band.highHz() < NARROWEST * band.lowHz()) {
      to.refuse(BAND_TOO_NARROW)
          .at("/high_hz")
          .given(band.highHz())
          .allowed(Allowed.atLeast(NARROWEST * band.lowHz(), "Hz"));
    }
  }
}
