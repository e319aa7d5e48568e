package org.footwell.acoustic.exposure;

import org.footwell.acoustic.exposure.SoundExposureRequest.Period;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;

/** Doses are those of a day. */
@Check.Of(value = "periods.*.duration_h", says = "All periods together are at most 24 hours.")
final class WithinOneDay implements Check<SoundExposureRequest> {

  private static final double DAY_H = 24;

  @Override
  public void check(SoundExposureRequest q, Refusing to) {
    double hours = q.periods().stream().mapToDouble(Period::durationH).sum();
    if (hours > DAY_H) {
      to.refuse(ExposureFault.DAY_TOO_LONG)
          .at("/periods")
          .given(hours)
          .allowed(Allowed.atMost(DAY_H, "h"));
    }
  }
}
