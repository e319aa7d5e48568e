package org.footwell.acoustic.driver.sheet;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;

/** Applies formulas: through the run, or aside when only trying out. */
public final class Steps {

  public static final Steps ASIDE = new Steps(null);

  private final Run run;

  public Steps(Run run) {
    this.run = run;
  }

  double apply(Formula.Of2 formula, double a, double b) {
    return run == null ? formula.at(a, b) : run.apply(formula, a, b);
  }

  double apply(Formula.Of3 formula, double a, double b, double c) {
    return run == null ? formula.at(a, b, c) : run.apply(formula, a, b, c);
  }

  double apply(Formula.Of4 formula, double a, double b, double c, double d) {
    return run == null ? formula.at(a, b, c, d) : run.apply(formula, a, b, c, d);
  }
}
