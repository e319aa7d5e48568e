package org.footwell.electrical.heat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Computed bounds in words. */
final class Bounds {

  private static final MathContext DOWN = new MathContext(4, RoundingMode.DOWN);

  private Bounds() {}

  /** Four digits, cut and not rounded, so that what is named as the largest is itself allowed. */
  static String atMost(double most) {
    return "at most " + BigDecimal.valueOf(most).round(DOWN).stripTrailingZeros().toPlainString();
  }
}
