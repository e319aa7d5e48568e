package org.footwell.calculation;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/**
 * A named formula: the arithmetic and the text that explains it, declared together and once.
 *
 * <p>A topic keeps its formulas as constants and applies them through the {@link Run}, which notes
 * the step only when workings were asked for. {@code at} computes without a run.
 *
 * @param quantity snake_case name of the result, ending in its unit
 * @param text the formula as a reader would write it, in terms of {@code inputs}
 * @param unit unit of the result, empty for a ratio
 * @param inputs symbols of the numbers put in, in order
 * @param source where the formula comes from
 */
public record Formula(
    String quantity, String text, String unit, List<String> inputs, Source source) {

  /** A formula of one number. */
  public record Of1(Formula formula, DoubleUnaryOperator f) {
    public double at(double a) {
      return f.applyAsDouble(a);
    }
  }

  /** A formula of two numbers. */
  public record Of2(Formula formula, DoubleBinaryOperator f) {
    public double at(double a, double b) {
      return f.applyAsDouble(a, b);
    }
  }

  /** A formula of three numbers. */
  public record Of3(Formula formula, F3 f) {
    public double at(double a, double b, double c) {
      return f.apply(a, b, c);
    }
  }

  /** A formula of four numbers. */
  public record Of4(Formula formula, F4 f) {
    public double at(double a, double b, double c, double d) {
      return f.apply(a, b, c, d);
    }
  }

  /** Three doubles to one. */
  @FunctionalInterface
  public interface F3 {
    double apply(double a, double b, double c);
  }

  /** Four doubles to one. */
  @FunctionalInterface
  public interface F4 {
    double apply(double a, double b, double c, double d);
  }

  /** Starts a formula: {@code Formula.of("power_w", "U²/R", "W", OHM).with("U", "R", (u, r) -> …)}. */
  public static Draft of(String quantity, String text, String unit, Source source) {
    return new Draft(quantity, text, unit, source);
  }

  /** A formula that still lacks its arithmetic. */
  public record Draft(String quantity, String text, String unit, Source source) {

    public Of1 with(String a, DoubleUnaryOperator f) {
      return new Of1(formula(a), f);
    }

    public Of2 with(String a, String b, DoubleBinaryOperator f) {
      return new Of2(formula(a, b), f);
    }

    public Of3 with(String a, String b, String c, F3 f) {
      return new Of3(formula(a, b, c), f);
    }

    public Of4 with(String a, String b, String c, String d, F4 f) {
      return new Of4(formula(a, b, c, d), f);
    }

    private Formula formula(String... inputs) {
      return new Formula(quantity, text, unit, List.of(inputs), source);
    }
  }
}
