package org.footwell.acoustic.level;

import org.footwell.acoustic.level.SoundLevelRequest.Addition;
import org.footwell.acoustic.level.SoundLevelRequest.Drive;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;

/** Of several drivers it is said how they play together. */
@Check.Of(
    value = {"driver_count", "power_w", "drive", "addition"},
    says = "With a driver_count above 1 addition is given, and with power_w drive as well.")
final class SeveralDriversDecided implements Check<SoundLevelRequest> {

  @Override
  public void check(SoundLevelRequest q, Refusing to) {
    if (q.driverCount() > 1 && q.powerW() != null && q.drive() == null) {
      to.refuse(LevelFault.SEVERAL_DRIVERS_UNDECIDED)
          .at("/drive")
          .allowed(Allowed.either(Drive.SHARED, Drive.EACH));
    }
    if (q.driverCount() > 1 && q.addition() == null) {
      to.refuse(LevelFault.SEVERAL_DRIVERS_UNDECIDED)
          .at("/addition")
          .allowed(Allowed.either(Addition.COHERENT, Addition.INCOHERENT));
    }
  }
}
