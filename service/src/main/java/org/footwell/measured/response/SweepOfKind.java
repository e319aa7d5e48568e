package org.footwell.measured.response;

import static org.footwell.calculation.CoreFault.REQUIRED;
import static org.footwell.measured.response.MeasurementFault.SWEEP_NOT_EXPECTED;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;

/** The sweep belongs to its kind. */
@Check.Of(
    value = {"kind", "sweep"},
    says = "sweep is required where kind is sweep, and has no meaning where not.")
final class SweepOfKind implements Check<RecordedSet> {

  @Override
  public void check(RecordedSet set, Refusing to) {
    if (set.kind() == RecordedKind.IMPULSE_RESPONSE) {
      if (set.sweep() != null) {
        to.refuse(SWEEP_NOT_EXPECTED).at("/sweep");
      }
    } else if (set.sweep() == null) {
      to.refuse(REQUIRED).at("/sweep").allowed(Allowed.givenWhere("kind", RecordedKind.SWEEP));
    }
  }
}
