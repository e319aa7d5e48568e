package org.footwell.calculation;

/**
 * How formulas are applied: a {@link Run} notes each step for the workings, and {@link #SILENT} just
 * works them out. A model that asks for it is one for both.
 */
public interface Arithmetic {

  /** Works formulas out without a word, and has all the time. */
  Arithmetic SILENT =
      new Arithmetic() {
        @Override
        public double apply(Formula.Of1 formula, double a) {
          return formula.at(a);
        }

        @Override
        public double apply(Formula.Of2 formula, double a, double b) {
          return formula.at(a, b);
        }

        @Override
        public double apply(Formula.Of3 formula, double a, double b, double c) {
          return formula.at(a, b, c);
        }

        @Override
        public double apply(Formula.Of4 formula, double a, double b, double c, double d) {
          return formula.at(a, b, c, d);
        }

        @Override
        public void checkDeadline() {}
      };

  double apply(Formula.Of1 formula, double a);

  double apply(Formula.Of2 formula, double a, double b);

  double apply(Formula.Of3 formula, double a, double b, double c);

  double apply(Formula.Of4 formula, double a, double b, double c, double d);

  /** To be called in every long loop: ends the calculation when its time is up. */
  void checkDeadline();
}
