package org.footwell.electrical.heat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;

/** Computed bounds. */
final class RoundedDown {

  private static final MathContext DOWN = new MathContext(4, RoundingMode.DOWN);

  private RoundedDown() {}

  /** Four digits, cut and not rounded, so that what is named as the largest is itself allowed. */
  static Phrase atMost(double most, String unit) {
    return Allowed.atMost(BigDecimal.valueOf(most).round(DOWN).doubleValue(), unit);
  }
}
