package org.footwell.analysis.tolerance;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** What is left of a standard deviation when one input is known exactly. */
final class LeftOver {

  /** The conditional deviation of two figures that are normal together, r their correlation. */
  static final Formula.Of2 BY_CORRELATION =
      Formula.of("deviation_left", "s·√(1 − r²)", "", Source.DEFINITION)
          .with("s", "r", (s, r) -> s * Math.sqrt(1 - r * r));

  /** By the meaning of the index; an estimate of it may lie a little outside of 0 to 1. */
  static final Formula.Of2 BY_FIRST_ORDER =
      Formula.of("deviation_left", "s·√(1 − S), S held within 0 and 1", "", Source.DEFINITION)
          .with("s", "S", (s, share) -> s * Math.sqrt(1 - Math.max(0, Math.min(share, 1))));

  private LeftOver() {}
}
