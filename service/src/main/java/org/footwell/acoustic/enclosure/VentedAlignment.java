package org.footwell.acoustic.enclosure;

import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.footwell.acoustic.enclosure.VentedBoxResult.Alignment;
import org.footwell.acoustic.enclosure.VentedBoxResult.Alignment.Family;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.ThieleSmall;

/**
 * The vented box whose response is that of a filter of order four. A driver and its leaks leave one
 * freedom, so qts and ql decide which filter that is. In units of √(fs·fb) the response of {@link
 * VentedForm} is s⁴/(s⁴ + b3·s³ + b2·s² + b1·s + 1) with
 *
 * <pre>
 *   b3 = (1/qts + h/ql)/√h,  b2 = (1 + alpha + h²)/h + 1/(ql·qts),  b1 = (h/qts + 1/ql)/√h
 * </pre>
 *
 * One way along all filters, from quasi-Butterworth over Butterworth to Chebyshev, is searched for the
 * one whose b3 and b1 have the same h; b2 then gives alpha.
 */
final class VentedAlignment {

  static final Source ALIGNMENTS =
      Source.of(
          "A. N. Thiele, Loudspeakers in Vented Boxes, Journal of the Audio Engineering Society 19"
              + " (1971): quasi-Butterworth, Butterworth and Chebyshev responses (from memory, not"
              + " checked against a copy)");

  /** Ripple in dB of a Chebyshev filter of order four whose poles are k times as far left. */
  static final Formula.Of1 RIPPLE =
      Formula.of("ripple_db", "10·lg(1 + 1/sinh²(4·artanh(k)))", "dB", ALIGNMENTS)
          .with("k", VentedAlignment::ripple);

  private static final Formula.Of4 ALPHA =
      Formula.of("alpha", "b2·h − 1 − h² − h/(ql·qts)", "", ThieleSmall.SMALL_VENTED)
          .with("b2", "h", "ql", "qts", (b2, h, ql, qts) -> b2 * h - 1 - h * h - h / (ql * qts));
  private static final Formula.Of2 VOLUME =
      Formula.of("volume_l", "vas/alpha", "l", ThieleSmall.SMALL_VENTED)
          .with("vas", "alpha", (vas, alpha) -> vas / alpha);
  private static final Formula.Of2 TUNING =
      Formula.of("fb_hz", "h·fs", "Hz", ThieleSmall.SMALL_VENTED)
          .with("h", "fs", (h, fs) -> h * fs);

  /** Ends and steps of the way along the filters: qts of about 0.04 at one, 4 dB of ripple at the other. */
  private static final double FROM = -3;

  private static final double TO = 0.8;
  private static final int STEPS = 380;

  private static final double ACCURACY = 1e-13;
  private static final int MOST_STEPS = 100;

  /** So near to Butterworth's own coefficients a filter is called by that name. */
  private static final double NEARLY = 0.01;

  private final double qts;
  private final double ql;

  private VentedAlignment(double qts, double ql) {
    this.qts = qts;
    this.ql = ql;
  }

  /** The box for a driver of a total Q, or none where none of these filters can be had. */
  static Optional<Alignment> of(double qts, double ql, double vasL, double fsHz, Arithmetic steps) {
    VentedAlignment search = new VentedAlignment(qts, ql);
    double place = search.place();
    Filter filter = Filter.at(place);
    double h = search.tuningRatio(filter);
    if (!(ALPHA.at(filter.b2, h, ql, qts) > 0)) {
      return Optional.empty();
    }
    double alpha = steps.apply(ALPHA, filter.b2, h, ql, qts);
    boolean near = Math.abs(filter.b1 / Filter.at(0).b1 - 1) < NEARLY;
    return Optional.of(
        new Alignment(
            near ? Family.BUTTERWORTH : place < 0 ? Family.QUASI_BUTTERWORTH : Family.CHEBYSHEV,
            place > 0 ? steps.apply(RIPPLE, 1 - place) : 0,
            steps.apply(VOLUME, vasL, alpha),
            steps.apply(TUNING, h, fsHz)));
  }

  /** Where on the way the filter lies that driver and leaks can make; NaN where there is none. */
  private double place() {
    double step = (TO - FROM) / STEPS;
    for (int i = 0; i < STEPS; i++) {
      double from = FROM + i * step;
      // Not a number on one side makes the product none: there no tuning has such a b3.
      if (misfit(from) * misfit(from + step) <= 0) {
        return new BrentSolver(ACCURACY).solve(MOST_STEPS, this::misfit, from, from + step);
      }
    }
    return Double.NaN;
  }

  private double misfit(double place) {
    Filter filter = Filter.at(place);
    double h = tuningRatio(filter);
    return (h / qts + 1 / ql) / Math.sqrt(h) - filter.b1;
  }

  /** The tuning ratio that gives b3; not a number where none does. */
  private double tuningRatio(Filter filter) {
    double root = Math.sqrt(filter.b3 * filter.b3 - 4 / (ql * qts));
    double x = 2 / (qts * (filter.b3 + root));
    return x * x;
  }

  private static double ripple(double k) {
    double artanh = Math.log((1 + k) / (1 - k)) / 2;
    return 10 * Math.log10(1 + 1 / Math.pow(Math.sinh(4 * artanh), 2));
  }

  /** Coefficients of a filter of order four. */
  private record Filter(double b3, double b2, double b1) {

    /** Quasi-Butterworth below 0, Butterworth at 0, Chebyshev with k = 1 − place above. */
    static Filter at(double place) {
      return place < 0 ? quasi(1 - place) : chebyshev(1 - place);
    }

    /** |G|² = s⁸/(s⁸ + c·s² + 1): of the other powers the coefficients are 0. */
    private static Filter quasi(double times) {
      double b3 = times * chebyshev(1).b3;
      double b2 = b3 * b3 / 2;
      return new Filter(b3, b2, (b2 * b2 + 2) / (2 * b3));
    }

    /** From the poles of the low-pass, turned over and scaled so that the last coefficient is 1. */
    private static Filter chebyshev(double k) {
      double[] b = new double[2];
      double[] c = new double[2];
      for (int pair = 0; pair < 2; pair++) {
        double angle = (2 * pair + 1) * Math.PI / 8;
        double left = k * Math.sin(angle);
        c[pair] = 1 / (left * left + Math.pow(Math.cos(angle), 2));
        b[pair] = 2 * left * c[pair];
      }
      double unit = Math.pow(c[0] * c[1], 0.25);
      return new Filter(
          (b[0] + b[1]) / unit,
          (c[0] + c[1] + b[0] * b[1]) / (unit * unit),
          (b[0] * c[1] + b[1] * c[0]) / (unit * unit * unit));
    }
  }
}
