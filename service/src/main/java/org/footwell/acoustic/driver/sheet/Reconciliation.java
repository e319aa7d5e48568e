package org.footwell.acoustic.driver.sheet;

import static org.footwell.acoustic.driver.sheet.Figure.QES;
import static org.footwell.acoustic.driver.sheet.Figure.QMS;
import static org.footwell.acoustic.driver.sheet.Figure.QTS;

import java.util.List;
import java.util.stream.Stream;
import org.footwell.calculation.Source;

/**
 * The record that agrees with itself and lies nearest to the given figures.
 *
 * <p>Six unknowns, the logarithms of sd, cms, mms, bl, re and rms; every given figure is an
 * observation of their sum with fixed coefficients, weighted by its uncertainty. Only qts is not
 * linear; it is linearised at the last solution until that stands still (Gauss and Newton).
 */
public final class Reconciliation {

  public static final Source LEAST_SQUARES =
      Source.of(
          "Weighted linear least squares; standardised residuals as in W. Baarda, A Testing"
              + " Procedure for Use in Geodetic Networks (1968); from memory, not checked against"
              + " a copy");

  /** Of a record that nobody wants reconciled. */
  public static final Reconciliation NONE = new Reconciliation(null, DriverTolerance.STANDARD);

  private static final int MOST_ROUNDS = 30;

  /** Each round squares the distance left, or nearly so: this leaves less than a billionth. */
  private static final double STILL = 1e-6;

  /** Share of an observation that others confirm, below which it has no residual to speak of. */
  private static final double UNCONFIRMED = 1e-6;

  private static final double EQUAL = 1e-6;

  /** The one figure that is not linear. */
  private static final int TOTAL = QTS.index();

  public static final double PER_DB = Math.log(10) / 10;

  /** Powers of sd, cms, mms, bl, re, rms in each figure; that of qts depends on the solution. */
  private static final double[][] POWERS = {
    {1, 0, 0, 0, 0, 0},
    {0, 1, 0, 0, 0, 0},
    {0, 0, 1, 0, 0, 0},
    {0, 0, 0, 1, 0, 0},
    {0, 0, 0, 0, 1, 0},
    {0, 0, 0, 0, 0, 1},
    {0, -0.5, -0.5, 0, 0, 0},
    {2, 1, 0, 0, 0, 0},
    {0, -0.5, 0.5, -2, 1, 0},
    {0, -0.5, 0.5, 0, 0, -1},
    {},
    {2, 0, -2, 2, -2, 0}
  };

  private final Sheet sheet;
  private final double uncertainty;
  private final double levelUncertainty;
  private final double[] observed = new double[Figure.ALL.length];
  private final double[] weights = new double[Figure.ALL.length];
  private final double[] totalQ = new double[NormalEquations.UNKNOWNS];
  private final NormalEquations equations = new NormalEquations();
  private final double[] residuals = new double[Figure.ALL.length];
  private final double[] adjusted = new double[Figure.ALL.length];
  private final double[] standardised = new double[Figure.ALL.length];
  private int observations;
  private double farthest;
  private double lnQes;
  private double lnQms;

  private Reconciliation(Sheet sheet, DriverTolerance tolerance) {
    this.sheet = sheet;
    this.uncertainty = tolerance.figurePercent() / 100;
    this.levelUncertainty = tolerance.sensitivityDb() * PER_DB / 2;
  }

  public static Reconciliation of(Sheet sheet, DriverTolerance tolerance) {
    Reconciliation reconciliation = new Reconciliation(sheet, tolerance);
    reconciliation.observe();
    reconciliation.solve();
    if (reconciliation.redundancy() > 0) {
      reconciliation.judge();
    }
    return reconciliation;
  }

  private void observe() {
    boolean hasQ = sheet.isKnown(QES) && sheet.isKnown(QMS);
    for (Figure figure : Figure.ALL) {
      if (sheet.isGiven(figure) && (figure != QTS || hasQ)) {
        int i = figure.index();
        boolean level = figure == Figure.SENSITIVITY;
        double unit = level ? PER_DB : 1;
        observed[i] =
            (level ? sheet.of(figure) * PER_DB : Math.log(sheet.of(figure))) - constant(figure);
        double base = level ? levelUncertainty : uncertainty;
        // A figure rounded to a step of 2·u has the standard deviation u/√3.
        double printed = sheet.rounding(figure) * unit;
        weights[i] = 1 / (base * base + printed * printed / 3);
        observations++;
      }
    }
    lnQes = hasQ ? Math.log(sheet.of(QES)) : 0;
    lnQms = hasQ ? Math.log(sheet.of(QMS)) : 0;
  }

  /** What a figure adds to the sum of logarithms, in the units of its field. */
  private double constant(Figure figure) {
    double rho = sheet.air.density();
    double c = sheet.air.speed();
    return switch (figure) {
      case FS_HZ -> Math.log(1000 / (2 * Math.PI));
      case VAS_L -> Math.log(rho * c * c * 1e-8);
      case SENSITIVITY ->
          Math.log(
              rho * rho / (4 * Math.PI * Math.PI) / 100 * sheet.drive.squaredV() / (20e-6 * 20e-6));
      default -> 0;
    };
  }

  private void solve() {
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] != 0 && i != TOTAL) {
        equations.add(POWERS[i], weights[i], observed[i]);
      }
    }
    if (weights[TOTAL] == 0) {
      equations.solve();
      return;
    }
    boolean again = true;
    for (int round = 0; again && round < MOST_ROUNDS; round++) {
      linearise();
      equations.solveWith(totalQ, weights[TOTAL], observed[TOTAL]);
      again = moved();
    }
  }

  /** d ln qts = (qts/qes)·d ln qes + (qts/qms)·d ln qms. */
  private void linearise() {
    double partOfQes = 1 / (1 + Math.exp(lnQes - lnQms));
    double[] qes = POWERS[QES.index()];
    double[] qms = POWERS[QMS.index()];
    for (int j = 0; j < NormalEquations.UNKNOWNS; j++) {
      totalQ[j] = partOfQes * qes[j] + (1 - partOfQes) * qms[j];
    }
    // ln qts = ln qms − ln(1 + qms/qes), and its linear part is taken away again.
    double lnQts = lnQes + Math.log(partOfQes);
    double linear = partOfQes * lnQes + (1 - partOfQes) * lnQms;
    observed[TOTAL] = Math.log(sheet.of(QTS)) - (lnQts - linear);
  }

  private double[] powers(int figure) {
    return figure == TOTAL ? totalQ : POWERS[figure];
  }

  private boolean moved() {
    double newQes = equations.product(POWERS[QES.index()]);
    double newQms = equations.product(POWERS[QMS.index()]);
    double far = Math.abs(newQes - lnQes) + Math.abs(newQms - lnQms);
    lnQes = newQes;
    lnQms = newQms;
    return far > STILL;
  }

  private void judge() {
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] != 0) {
        double confirmed = 1 - weights[i] * equations.variance(powers(i));
        if (confirmed > UNCONFIRMED) {
          residuals[i] = observed[i] - equations.product(powers(i));
          adjusted[i] = sheet.of(Figure.ALL[i]) * Math.exp(-residuals[i]);
          standardised[i] = Math.abs(residuals[i]) * Math.sqrt(weights[i] / confirmed);
          farthest = Math.max(farthest, standardised[i]);
        } else {
          weights[i] = 0;
        }
      }
    }
  }

  /** How many more figures are given than the record needs. */
  public int redundancy() {
    return observations - equations.rank();
  }

  /** Whether the figure is one of an over-determined group. */
  public boolean has(Figure figure) {
    return redundancy() > 0 && weights[figure.index()] != 0;
  }

  /** Given over adjusted, natural logarithm. */
  public double residual(Figure figure) {
    return residuals[figure.index()];
  }

  /** Residual over its own standard deviation. */
  public double standardised(Figure figure) {
    return standardised[figure.index()];
  }

  public Double adjustedOrNull(Figure figure) {
    if (!has(figure)) {
      return null;
    }
    return figure == Figure.SENSITIVITY
        ? (Double) (sheet.of(figure) - residual(figure) / PER_DB)
        : (Double) adjusted[figure.index()];
  }

  /** In percent of the adjusted value; for the level in dB. */
  public Double residualOrNull(Figure figure) {
    if (!has(figure)) {
      return null;
    }
    return figure == Figure.SENSITIVITY
        ? (Double) (residual(figure) / PER_DB)
        : (Double) (100 * (sheet.of(figure) / adjusted[figure.index()] - 1));
  }

  /** The largest standardised residual; 0 in a record without redundancy. */
  public double farthestDeviations() {
    return farthest;
  }

  /**
   * The figure with the largest standardised residual; several where one condition ties them, and
   * none in a record without redundancy.
   */
  public List<Figure> farthest() {
    double least = farthest * (1 - EQUAL);
    return farthest == 0
        ? List.of()
        : Stream.of(Figure.ALL)
            .filter(figure -> has(figure) && standardised(figure) >= least)
            .toList();
  }
}
