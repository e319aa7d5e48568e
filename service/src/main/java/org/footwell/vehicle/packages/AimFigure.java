package org.footwell.vehicle.packages;

import java.math.BigDecimal;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Words;
import org.footwell.calculation.text.WrittenMoney;

/** A figure of what a package is judged by, with its unit; money is of one currency and not rounded. */
enum AimFigure implements Words {
  PRICE,
  LEVEL,
  REACH,
  MASS;

  static Phrase of(Aim aim, double figure) {
    Phrase phrase = Phrase.of(valueOf(aim.name()));
    return aim == Aim.PRICE
        ? phrase.with(
            "figure",
            WrittenMoney.withDecimals(BigDecimal.valueOf(figure), WrittenMoney.USUAL_DECIMALS))
        : phrase.with("figure", figure);
  }
}
