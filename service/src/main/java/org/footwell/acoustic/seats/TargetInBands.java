package org.footwell.acoustic.seats;

import java.util.Arrays;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.physics.ThirdOctaves;

/** A target says something of what is looked at. */
@Check.Of(
    value = {"from_hz", "to_hz", "target.*.frequency_hz", "tilt"},
    says =
        "A third octave between from_hz and to_hz has its middle where target has points around it.")
final class TargetInBands implements Check<SeatLevelsRequest> {

  @Override
  public void check(SeatLevelsRequest q, Refusing to) {
    Target target = SystemLevels.target(q);
    double[] bands =
        q.fromHz() > q.toHz()
            ? new double[0]
            : ThirdOctaves.between(q.fromHz(), q.toHz()).toArray();
    // That there are no bands is told by another.
    if (target.given() && bands.length > 0 && Arrays.stream(bands).noneMatch(target::covers)) {
      to.refuse(SeatLevelFault.TARGET_OUTSIDE_BANDS)
          .at("/target")
          .allowed(Allowed.between(q.fromHz(), q.toHz(), "Hz"));
    }
  }
}
