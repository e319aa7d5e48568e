package org.footwell.fitting.comparison;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.footwell.calculation.text.Names;

/** Figures as a person reads them; what is not known is a dash. */
final class PageFigures {

  static final String DASH = "–";

  private PageFigures() {}

  static String plain(Double value, int decimals, String unit) {
    return value == null ? DASH : rounded(value, decimals).toPlainString() + " " + unit;
  }

  static String signed(Double value, int decimals, String unit) {
    if (value == null) {
      return DASH;
    }
    BigDecimal rounded = rounded(value, decimals);
    String sign = rounded.signum() > 0 ? "+" : rounded.signum() < 0 ? "−" : "";
    return sign + rounded.abs().toPlainString() + " " + unit;
  }

  /** How far a frequency moves down, or up. */
  static String octaves(Double down) {
    if (down == null) {
      return DASH;
    }
    String size = plain(Math.abs(down), 2, "octaves");
    return down == 0 ? size : size + (down > 0 ? " lower" : " higher");
  }

  static String level(Double value) {
    return plain(value, 1, "dB");
  }

  static String kilograms(Double grams) {
    return grams == null ? DASH : plain(grams / 1000, 2, "kg");
  }

  static String signedKilograms(Double grams) {
    return grams == null ? DASH : signed(grams / 1000, 2, "kg");
  }

  /** All decimals that were given, two at least. */
  static String money(BigDecimal price, String currency) {
    if (price == null) {
      return DASH;
    }
    BigDecimal shown = price.scale() < 2 ? price.setScale(2, RoundingMode.UNNECESSARY) : price;
    return shown.toPlainString() + (currency == null ? "" : " " + currency);
  }

  static String words(Enum<?> constant) {
    return constant == null ? DASH : Names.of(constant).replace('_', ' ');
  }

  /** A text of the caller's as text of a page, and nothing else. */
  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  private static BigDecimal rounded(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
  }
}
