package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.NetworkFault.DRIVER_MISSING;
import static org.footwell.electrical.passive.NetworkFault.NOTHING_TO_COMPENSATE;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;

/** What is compensated is the inductance of a driver. */
@Check.Of(
    value = {"compensate", "driver.le_mh"},
    says = "compensate needs a driver with an inductance above 0.")
final class CompensatedDriver implements Check<PassiveFilterRequest> {

  /** Whether there is nothing to compensate, or a driver for it. */
  static boolean kept(PassiveFilterRequest q) {
    return !q.compensate() || (q.driver() != null && q.driver().leMh() > 0);
  }

  @Override
  public void check(PassiveFilterRequest q, Refusing to) {
    if (!q.compensate()) {
      return;
    }
    if (q.driver() == null) {
      to.refuse(DRIVER_MISSING).at("/driver").allowed(Phrase.of(PassiveWords.DRIVER_TO_COMPENSATE));
    } else if (q.driver().leMh() != null && q.driver().leMh() == 0) {
      to.refuse(NOTHING_TO_COMPENSATE).at("/driver/le_mh").given(0).allowed(Allowed.above(0, ""));
    }
  }
}
