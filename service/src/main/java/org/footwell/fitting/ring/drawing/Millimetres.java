package org.footwell.fitting.ring.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as text in drawings: a decimal point and no exponent, whatever the locale. */
public final class Millimetres {

  /** A tenth of a micrometre, far below what any tool holds. */
  private static final int DIGITS = 4;

  private Millimetres() {}

  /** So many mm, to a tenth of a micrometre. */
  public static String text(double mm) {
    BigDecimal rounded =
        BigDecimal.valueOf(mm).setScale(DIGITS, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
