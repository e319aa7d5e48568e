package org.footwell.calculation.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.util.Locale;

/** Sums of money as people read them everywhere: with all their decimals, and their thousands set apart. */
public final class WrittenMoney {

  /** Where no currency says how many it has. */
  public static final int USUAL_DECIMALS = 2;

  private WrittenMoney() {}

  /** A sum that has at least so many decimals. */
  public static BigDecimal withDecimals(BigDecimal sum, int decimals) {
    return sum.scale() < decimals ? sum.setScale(decimals, RoundingMode.UNNECESSARY) : sum;
  }

  /** A sum by the marks of a language, without its currency: 1,600.00 or 1.600,00. */
  public static String of(BigDecimal sum, Locale language) {
    DecimalFormat format = new DecimalFormat("#,##0", Marks.of(language));
    int decimals = Math.max(0, sum.scale());
    format.setMinimumFractionDigits(decimals);
    format.setMaximumFractionDigits(decimals);
    return format.format(sum);
  }
}
