package org.footwell.parts;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;

/** A curve has a point; that a range falls is told by the rule. */
@Check.Of(says = "At least one point of the spacing is in the range, unless list_hz is given.")
final class PointsInRange implements Check<CurveFrequencies> {

  @Override
  public void check(CurveFrequencies wanted, Refusing to) {
    if (wanted.fromHz() < wanted.toHz() && wanted.points().length == 0) {
      to.refuse(FrequencyFault.RANGE_WITHOUT_POINTS)
          .given(Allowed.range(wanted.fromHz(), wanted.toHz(), "Hz"))
          .allowed(Allowed.widerRange());
    }
  }
}
