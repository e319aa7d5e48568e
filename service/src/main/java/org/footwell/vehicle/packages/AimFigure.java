package org.footwell.vehicle.packages;

import java.math.BigDecimal;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Words;

/** A figure of what a package is judged by, with its unit; money is of one currency and not rounded. */
enum AimFigure implements Words {
  PRICE,
  LEVEL,
  REACH,
  MASS;

  static Phrase of(Aim aim, double figure) {
    Phrase phrase = Phrase.of(valueOf(aim.name()));
    return aim == Aim.PRICE
        ? phrase.own("figure", BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString())
        : phrase.with("figure", figure);
  }
}
