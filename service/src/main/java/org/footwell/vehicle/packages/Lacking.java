package org.footwell.vehicle.packages;

import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;

/** Refuses what packages cannot do without, though plans and offers can. */
final class Lacking {

  private Lacking() {}

  static void refuse(Object given, String at, Refusing to) {
    if (given == null) {
      to.refuse(CoreFault.REQUIRED).at(at);
    }
  }
}
