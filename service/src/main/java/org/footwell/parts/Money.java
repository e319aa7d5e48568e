package org.footwell.parts;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Objects;

/** Exact decimal sums; only what is divided is rounded. */
public final class Money {

  /** Gains below this are not heard and not priced, dB; common practice, no source. */
  public static final double SLIGHT_DB = 0.1;

  /** Prices have so many digits before the point at most. */
  public static final int MOST_DIGITS = 7;

  /** And so many decimals. */
  public static final int FINEST = 4;

  private Money() {}

  /**
   * A price without the exponent or the zeros it may have been written with, which a sum would carry
   * along; null stays null. So does what no bound allows: written out, the zeros of 1e100000000 alone
   * would take all memory there is.
   */
  public static BigDecimal plain(BigDecimal price) {
    if (price == null || (price.scale() >= 0 && price.scale() <= FINEST)) {
      return price;
    }
    BigDecimal bare = price.stripTrailingZeros();
    boolean beyondBounds = (long) bare.precision() - bare.scale() > MOST_DIGITS;
    return beyondBounds ? price : bare.setScale(Math.max(0, bare.scale()));
  }

  /** The sum, or null when one of them is not known. */
  public static BigDecimal sum(Collection<BigDecimal> prices) {
    return prices.stream().anyMatch(Objects::isNull)
        ? null
        : prices.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** A price for each dB gained, to the cent, a half rounded up; null unless there is a gain. */
  public static BigDecimal perDb(BigDecimal price, Double gainDb) {
    return price == null || gainDb == null || gainDb < SLIGHT_DB
        ? null
        : price.divide(BigDecimal.valueOf(gainDb), 2, RoundingMode.HALF_UP);
  }
}
