package org.footwell.acoustic.driver.sheet;

/**
 * Normal equations of six unknowns, some of which nothing may determine: those are left at 0. Sums
 * that the observations determine do not depend on that choice.
 */
final class NormalEquations {

  static final int UNKNOWNS = 6;

  /** A pivot below this part of its diagonal is nothing but rounding. */
  private static final double NO_PIVOT = 1e-9;

  /** Sums of the observations added; only the lower triangle of the matrix is used. */
  private final double[] sums = new double[UNKNOWNS * UNKNOWNS];

  private final double[] sides = new double[UNKNOWNS];

  private final double[] normal = new double[UNKNOWNS * UNKNOWNS];
  private final double[] pivots = new double[UNKNOWNS];
  private final double[] unknowns = new double[UNKNOWNS];
  private final double[] z = new double[UNKNOWNS];
  private int rank;

  /** An observation of the sum of a·unknowns. */
  void add(double[] a, double weight, double observed) {
    add(a, weight, observed, sums, sides);
  }

  /** Solves with the observations added so far. */
  void solve() {
    System.arraycopy(sums, 0, normal, 0, sums.length);
    System.arraycopy(sides, 0, unknowns, 0, UNKNOWNS);
    factorise();
    substitute();
  }

  /** Solves with one observation more, which is not kept. */
  void solveWith(double[] a, double weight, double observed) {
    System.arraycopy(sums, 0, normal, 0, sums.length);
    System.arraycopy(sides, 0, unknowns, 0, UNKNOWNS);
    add(a, weight, observed, normal, unknowns);
    factorise();
    substitute();
  }

  private static void add(
      double[] a, double weight, double observed, double[] matrix, double[] side) {
    for (int j = 0; j < UNKNOWNS; j++) {
      if (a[j] != 0) {
        double weighted = weight * a[j];
        side[j] += weighted * observed;
        for (int k = 0; k <= j; k++) {
          matrix[j * UNKNOWNS + k] += weighted * a[k];
        }
      }
    }
  }

  /** How many unknowns are determined. */
  int rank() {
    return rank;
  }

  /** Into L·D·Lᵀ in place, L below the diagonal; an unknown that nothing observes has no pivot. */
  private void factorise() {
    rank = 0;
    for (int j = 0; j < UNKNOWNS; j++) {
      double diagonal = normal[j * UNKNOWNS + j];
      double pivot = diagonal;
      for (int k = 0; k < j; k++) {
        double l = normal[j * UNKNOWNS + k];
        pivot -= l * l * pivots[k];
      }
      boolean usable = pivot > NO_PIVOT * diagonal;
      pivots[j] = usable ? pivot : 0;
      rank += usable ? 1 : 0;
      for (int i = j + 1; i < UNKNOWNS; i++) {
        double sum = normal[i * UNKNOWNS + j];
        for (int k = 0; k < j; k++) {
          sum -= normal[i * UNKNOWNS + k] * normal[j * UNKNOWNS + k] * pivots[k];
        }
        normal[i * UNKNOWNS + j] = usable ? sum / pivot : 0;
      }
    }
  }

  private void substitute() {
    for (int j = 0; j < UNKNOWNS; j++) {
      for (int k = 0; k < j; k++) {
        unknowns[j] -= normal[j * UNKNOWNS + k] * unknowns[k];
      }
    }
    for (int j = UNKNOWNS - 1; j >= 0; j--) {
      unknowns[j] = pivots[j] == 0 ? 0 : unknowns[j] / pivots[j];
      for (int k = j + 1; k < UNKNOWNS; k++) {
        unknowns[j] -= pivots[j] == 0 ? 0 : normal[k * UNKNOWNS + j] * unknowns[k];
      }
    }
  }

  /** Sum of a·unknowns. */
  double product(double[] powers) {
    double sum = 0;
    for (int j = 0; j < UNKNOWNS; j++) {
      sum += powers[j] * unknowns[j];
    }
    return sum;
  }

  /** aᵀ·N⁻¹·a through L and D. */
  double variance(double[] a) {
    double sum = 0;
    for (int j = 0; j < UNKNOWNS; j++) {
      double value = a[j];
      for (int k = 0; k < j; k++) {
        value -= normal[j * UNKNOWNS + k] * z[k];
      }
      z[j] = value;
      sum += pivots[j] == 0 ? 0 : value * value / pivots[j];
    }
    return sum;
  }
}
