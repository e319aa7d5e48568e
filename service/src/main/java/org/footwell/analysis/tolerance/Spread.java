package org.footwell.analysis.tolerance;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Words;

/** How a number and how far it may be off are said, with no more digits than that is worth. */
enum Spread implements Words {
  AROUND,
  LEFT;

  /** JCGM 100:2008 (GUM), 7.2.6: two digits of an uncertainty, and of the number those above them. */
  private static final MathContext WORTH = new MathContext(2, RoundingMode.HALF_UP);

  /** A number of a result with what it may be off. */
  static Phrase around(OutputBudget output) {
    BigDecimal around = rounded(output.plusMinus());
    BigDecimal mean = BigDecimal.valueOf(output.mean());
    return Phrase.of(AROUND)
        .own("what", output.path())
        .with("mean", mean.setScale(around.scale(), RoundingMode.HALF_UP).doubleValue())
        .with("around", around.doubleValue());
  }

  /** What it may be off with the input known exactly that drives it most. */
  static Phrase left(OutputBudget output) {
    return Phrase.of(LEFT)
        .own("what", output.path())
        .with("around", rounded(output.plusMinusLeft()).doubleValue());
  }

  private static BigDecimal rounded(double number) {
    return BigDecimal.valueOf(number).round(WORTH);
  }
}
