package org.footwell.vehicle.packages;

import java.math.BigDecimal;
import org.footwell.parts.Money;

/** Prices as whole numbers of their finest step. */
final class Prices {

  private Prices() {}

  static long of(BigDecimal price) {
    return price.movePointRight(Money.FINEST).longValueExact();
  }

  static BigDecimal of(long steps) {
    BigDecimal price = BigDecimal.valueOf(steps, Money.FINEST).stripTrailingZeros();
    return price.setScale(Math.max(0, price.scale()));
  }
}
