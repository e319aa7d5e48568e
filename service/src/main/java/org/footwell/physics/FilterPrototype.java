package org.footwell.physics;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.analysis.solvers.LaguerreSolver;
import org.apache.commons.math3.complex.Complex;
import org.footwell.calculation.Source;

/**
 * A low-pass filter in terms of its own angular frequency, 1 rad/s: the textbook form that every
 * analog low- and high-pass is scaled from.
 *
 * @param sections the factors of its transfer function, each 1 at zero frequency
 */
public record FilterPrototype(List<Section> sections) {

  public static final Source BUTTERWORTH =
      Source.of("S. Butterworth, On the Theory of Filter Amplifiers, Wireless Engineer 7 (1930)");
  public static final Source LINKWITZ =
      Source.of(
          "S. H. Linkwitz, Active Crossover Networks for Noncoincident Drivers, Journal of the"
              + " Audio Engineering Society 24 (1976)");
  public static final Source THOMSON =
      Source.of(
          "W. E. Thomson, Delay Networks Having Maximally Flat Frequency Characteristics,"
              + " Proceedings of the IEE 96 (1949); reverse Bessel polynomials");

  /** Highest order whose Bessel poles are found to more than ten digits. */
  private static final int HIGHEST_ORDER = 8;

  public FilterPrototype {
    sections = List.copyOf(sections);
  }

  /**
   * One factor: 1/(1 + s/ω0) of the first order, 1/(1 + s/(Q·ω0) + (s/ω0)²) of the second.
   *
   * @param order 1 or 2
   * @param w0 its angular frequency ω0 in that of the prototype
   * @param q quality factor; of no meaning in the first order
   */
  public record Section(int order, double w0, double q) {

    /** The same section of the high-pass: s becomes 1/s. */
    Section mirrored() {
      return new Section(order, 1 / w0, q);
    }

    Section stretched(double factor) {
      return new Section(order, factor * w0, q);
    }

    /** Squared magnitude of the low-pass at the angular frequency w. */
    double power(double w) {
      double x = w / w0;
      double real = order == 1 ? 1 : 1 - x * x;
      double imaginary = order == 1 ? x : x / q;
      return 1 / (real * real + imaginary * imaginary);
    }
  }

  /** Butterworth of order 1 to 8; −3.01 dB at 1 rad/s. */
  public static FilterPrototype butterworth(int order) {
    List<Section> sections = new ArrayList<>();
    if (order % 2 == 1) {
      sections.add(new Section(1, 1, Double.NaN));
    }
    for (int k = 1; k <= order / 2; k++) {
      // Poles lie evenly on the unit circle: the k-th pair is this far from the imaginary axis.
      sections.add(new Section(2, 1, 1 / (2 * Math.sin((2 * k - 1) * Math.PI / (2 * order)))));
    }
    return new FilterPrototype(sections);
  }

  /** Linkwitz-Riley of order 2, 4, 6 or 8: a Butterworth of half the order, twice; −6.02 dB. */
  public static FilterPrototype linkwitzRiley(int order) {
    if (order % 2 == 1) {
      throw new IllegalArgumentException("Linkwitz-Riley exists in even orders only");
    }
    List<Section> half = butterworth(order / 2).sections();
    List<Section> twice = new ArrayList<>(half);
    twice.addAll(half);
    return new FilterPrototype(twice);
  }

  /** Bessel of order 1 to 8 as it comes from the polynomial: 1 s of delay at zero frequency. */
  public static FilterPrototype bessel(int order) {
    if (order < 1 || order > HIGHEST_ORDER) {
      throw new IllegalArgumentException("Bessel of order 1 to " + HIGHEST_ORDER + " only");
    }
    List<Section> sections = new ArrayList<>();
    for (Complex pole : new LaguerreSolver().solveAllComplex(reverseBessel(order), 0)) {
      double w0 = pole.abs();
      if (Math.abs(pole.getImaginary()) < 1e-6 * w0) {
        sections.add(new Section(1, w0, Double.NaN));
      } else if (pole.getImaginary() > 0) {
        sections.add(new Section(2, w0, -w0 / (2 * pole.getReal())));
      }
    }
    return new FilterPrototype(sections);
  }

  /** Coefficients, lowest power first: (2n − k)!/(2^(n − k)·k!·(n − k)!). */
  private static double[] reverseBessel(int n) {
    double[] coefficients = new double[n + 1];
    coefficients[n] = 1;
    for (int k = n; k > 0; k--) {
      // Ratio of the k−1-th to the k-th.
      coefficients[k - 1] = coefficients[k] * k * (2 * n - k + 1) / (2.0 * (n - k + 1));
    }
    return coefficients;
  }

  /** The same filter scaled so that it is −3.01 dB at 1 rad/s. */
  public FilterPrototype halfPowerAtOne() {
    double halfPower = new BrentSolver(1e-14).solve(200, w -> power(w) - 0.5, 0.01, 100);
    return stretched(1 / halfPower);
  }

  /**
   * The same filter scaled so that its phase has turned halfway at 1 rad/s: the product of its
   * poles is 1, and low- and high-pass have the same slopes far off.
   */
  public FilterPrototype phaseMatchedAtOne() {
    double logarithm = sections.stream().mapToDouble(s -> s.order() * Math.log(s.w0())).sum();
    return stretched(Math.exp(-logarithm / order()));
  }

  public int order() {
    return sections.stream().mapToInt(Section::order).sum();
  }

  /** The low-pass with its angular frequency at a corner in Hz. */
  public AnalogFilter lowPass(double cornerHz) {
    return new AnalogFilter(false, cornerHz, sections);
  }

  /** The high-pass with its angular frequency at a corner in Hz. */
  public AnalogFilter highPass(double cornerHz) {
    return new AnalogFilter(true, cornerHz, sections.stream().map(Section::mirrored).toList());
  }

  private double power(double w) {
    return sections.stream().mapToDouble(s -> s.power(w)).reduce(1, (a, b) -> a * b);
  }

  private FilterPrototype stretched(double factor) {
    return new FilterPrototype(sections.stream().map(s -> s.stretched(factor)).toList());
  }
}
