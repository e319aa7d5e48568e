package org.footwell.acoustic.enclosure;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.physics.Decibels;
import org.footwell.physics.ThieleSmall;

/**
 * Small's response of a vented box with leaks, in terms of x = f/fs:
 *
 * <pre>
 *   G = x⁴/(x⁴ − S·x² + h² + j·(x·(h²/qts + h/ql) − x³·(1/qts + h/ql)))
 *   S = 1 + alpha + h² + h/(ql·qts)
 * </pre>
 *
 * The curve comes from the circuit, which knows more losses; this is for the workings and checks it.
 */
final class VentedForm {

  private static final Formula.Of4 MIDDLE =
      Formula.of("s", "1 + alpha + h² + h/(ql·qts)", "", ThieleSmall.SMALL_VENTED)
          .with(
              "alpha", "h", "ql", "qts", (alpha, h, ql, qts) -> 1 + alpha + h * h + h / (ql * qts));

  private static final Formula.Of3 REAL =
      Formula.of("denominator_real", "x⁴ − S·x² + h²", "", ThieleSmall.SMALL_VENTED)
          .with("x", "S", "h", (x, s, h) -> x * x * x * x - s * x * x + h * h);

  private static final Formula.Of4 IMAGINARY =
      Formula.of(
              "denominator_imaginary",
              "x·(h²/qts + h/ql) − x³·(1/qts + h/ql)",
              "",
              ThieleSmall.SMALL_VENTED)
          .with(
              "x",
              "h",
              "qts",
              "ql",
              (x, h, qts, ql) -> x * (h * h / qts + h / ql) - x * x * x * (1 / qts + h / ql));

  private static final Formula.Of3 RESPONSE =
      Formula.of("response_db", "20·lg(x⁴/√(real² + imaginary²))", "dB", ThieleSmall.SMALL_VENTED)
          .with(
              "x",
              "real",
              "imaginary",
              (x, re, im) -> Decibels.ofAmplitude(x * x * x * x / Math.sqrt(re * re + im * im)));

  private VentedForm() {}

  /** The response in dB at f/fs = x. */
  static double responseDb(
      double x, double alpha, double h, double ql, double qts, Arithmetic steps) {
    double s = steps.apply(MIDDLE, alpha, h, ql, qts);
    double real = steps.apply(REAL, x, s, h);
    double imaginary = steps.apply(IMAGINARY, x, h, qts, ql);
    return steps.apply(RESPONSE, x, real, imaginary);
  }
}
