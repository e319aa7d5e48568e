package org.footwell.electrical.passive;

import static org.footwell.parts.LadderElement.Place.SERIES;
import static org.footwell.parts.LadderElement.Place.SHUNT;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.parts.Filter;
import org.footwell.parts.LadderElement;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.FilterPrototype.Section;

/**
 * Ladders of coils and capacitors between a source without resistance and a resistor, made from the
 * denominator of the transfer function.
 *
 * <p>Of 1/(1 + a1·s + … + an·sⁿ) the even and the odd part, divided by each other, are the admittance
 * seen from the resistor back into the ladder: a continued fraction whose terms are the elements.
 * Its coefficients are the first column of the Routh array.
 */
final class LadderSynthesis {

  static final Source CAUER =
      Source.of(
          "Cauer synthesis of a ladder driven by a source without resistance, as in M. G. Ellis,"
              + " Electronic Filter Analysis and Synthesis, Artech House 1994, pages 99-102");

  /** Inductance in mH of a prototype value g for R ohm at a corner in Hz, low-pass. */
  static final Formula.Of3 LOW_PASS_MH =
      Formula.of("inductance_mh", "1000·g·R/(2·π·f)", "mH", Source.DEFINITION)
          .with("g", "R", "f", (g, r, f) -> 1e3 * g * r / (2 * Math.PI * f));

  /** Capacitance in µF of a prototype value g, low-pass. */
  static final Formula.Of3 LOW_PASS_UF =
      Formula.of("capacitance_uf", "10⁶·g/(2·π·f·R)", "µF", Source.DEFINITION)
          .with("g", "R", "f", (g, r, f) -> 1e6 * g / (2 * Math.PI * f * r));

  /** Inductance in mH of a prototype value g, high-pass: where the low-pass has a capacitor. */
  static final Formula.Of3 HIGH_PASS_MH =
      Formula.of("inductance_mh", "1000·R/(2·π·f·g)", "mH", Source.DEFINITION)
          .with("g", "R", "f", (g, r, f) -> 1e3 * r / (2 * Math.PI * f * g));

  /** Capacitance in µF of a prototype value g, high-pass: where the low-pass has a coil. */
  static final Formula.Of3 HIGH_PASS_UF =
      Formula.of("capacitance_uf", "10⁶/(2·π·f·R·g)", "µF", Source.DEFINITION)
          .with("g", "R", "f", (g, r, f) -> 1e6 / (2 * Math.PI * f * r * g));

  private LadderSynthesis() {}

  /** The elements of a low-pass for a load in ohm, from the source to the load. */
  static List<LadderElement> lowPass(Filter filter, double ohm) {
    List<LadderElement> elements = new ArrayList<>();
    double[] g = prototype(filter);
    for (int i = 0; i < g.length; i++) {
      elements.add(
          i % 2 == 0
              ? LadderElement.coil(SERIES, LOW_PASS_MH.at(g[i], ohm, filter.frequencyHz()))
              : LadderElement.capacitor(SHUNT, LOW_PASS_UF.at(g[i], ohm, filter.frequencyHz())));
    }
    return elements;
  }

  /** The elements of a high-pass for a load in ohm, from the source to the load. */
  static List<LadderElement> highPass(Filter filter, double ohm) {
    List<LadderElement> elements = new ArrayList<>();
    double[] g = prototype(filter);
    for (int i = 0; i < g.length; i++) {
      elements.add(
          i % 2 == 0
              ? LadderElement.capacitor(SERIES, HIGH_PASS_UF.at(g[i], ohm, filter.frequencyHz()))
              : LadderElement.coil(SHUNT, HIGH_PASS_MH.at(g[i], ohm, filter.frequencyHz())));
    }
    return elements;
  }

  /**
   * Element values for 1 ohm and 1 rad/s from the source to the load: coil, capacitor, coil, … The
   * high-pass has their inverses, since it is the low-pass with s turned into 1/s.
   */
  static double[] prototype(Filter filter) {
    return fromDenominator(denominator(filter.lowPass()));
  }

  /** Coefficients, lowest power first, in terms of the corner. */
  private static double[] denominator(AnalogFilter lowPass) {
    double[] product = {1};
    for (Section section : lowPass.sections()) {
      double w0 = section.w0();
      double[] factor =
          section.order() == 1
              ? new double[] {1, 1 / w0}
              : new double[] {1, 1 / (section.q() * w0), 1 / (w0 * w0)};
      product = multiply(product, factor);
    }
    return product;
  }

  private static double[] multiply(double[] one, double[] other) {
    double[] product = new double[one.length + other.length - 1];
    for (int i = 0; i < one.length; i++) {
      for (int k = 0; k < other.length; k++) {
        product[i + k] += one[i] * other[k];
      }
    }
    return product;
  }

  /** Ratios down the first column of the Routh array, the last one at the source. */
  static double[] fromDenominator(double[] a) {
    int n = a.length - 1;
    double[] g = new double[n];
    double[] upper = everySecond(a, n);
    double[] lower = everySecond(a, n - 1);
    for (int i = n - 1; i >= 0; i--) {
      g[i] = upper[0] / lower[0];
      double[] next = new double[Math.max(1, upper.length - 1)];
      for (int k = 0; k + 1 < upper.length; k++) {
        next[k] = upper[k + 1] - g[i] * (k + 1 < lower.length ? lower[k + 1] : 0);
      }
      upper = lower;
      lower = next;
    }
    return g;
  }

  private static double[] everySecond(double[] a, int highest) {
    double[] row = new double[highest / 2 + 1];
    for (int k = 0; k < row.length; k++) {
      row[k] = a[highest - 2 * k];
    }
    return row;
  }
}
