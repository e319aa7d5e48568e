package org.footwell.acoustic.seats;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.parts.FrequencyFault;
import org.footwell.physics.ThirdOctaves;

/** Something is looked at; that a range falls is told by the rule. */
@Check.Of(
    value = {"from_hz", "to_hz"},
    says = "A third octave has its middle between from_hz and to_hz.")
final class BandsInRange implements Check<SeatLevelsRequest> {

  @Override
  public void check(SeatLevelsRequest q, Refusing to) {
    if (q.fromHz() <= q.toHz() && ThirdOctaves.between(q.fromHz(), q.toHz()).count() == 0) {
      to.refuse(FrequencyFault.RANGE_WITHOUT_POINTS)
          .at("/from_hz")
          .given(Allowed.range(q.fromHz(), q.toHz(), "Hz"))
          .allowed(Allowed.widerRange());
    }
  }
}
