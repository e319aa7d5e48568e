package org.footwell.acoustic.loudness;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.parts.FrequencyFault;

/** Something is looked at; that a range falls is told by the rule. */
@Check.Of(
    value = {"from_hz", "to_hz"},
    says = "The nominal frequency of a third octave is in from_hz to to_hz.")
final class ContoursInRange implements Check<EqualLoudnessRequest> {

  @Override
  public void check(EqualLoudnessRequest q, Refusing to) {
    if (q.fromHz() <= q.toHz() && Contours.rows(q.fromHz(), q.toHz()).length == 0) {
      to.refuse(FrequencyFault.RANGE_WITHOUT_POINTS)
          .at("/from_hz")
          .given(Allowed.range(q.fromHz(), q.toHz(), "Hz"))
          .allowed(Allowed.widerRange());
    }
  }
}
