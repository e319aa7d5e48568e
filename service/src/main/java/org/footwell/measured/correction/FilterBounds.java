package org.footwell.measured.correction;

import java.util.ArrayList;
import java.util.List;

/**
 * Filters as numbers without bounds: frequency and q by their logarithms and the gain, each as
 * middle + half·sin(u) of its range, so that no step of a fit can leave it.
 */
final class FilterBounds {

  /** Step of a numerical derivative. */
  static final double STEP = 1e-5;

  /** At the very end of its range a number could not move: its derivative is nothing there. */
  private static final double INSIDE = 0.98;

  private final double[] low;
  private final double[] high;

  /** Bounds of filters that have their centres within a range of frequencies in Hz too. */
  FilterBounds(FilterScope scope, double fromHz, double toHz) {
    low = new double[] {Math.log(fromHz), Math.log(scope.lowestQ()), -scope.cutDb()};
    high = new double[] {Math.log(toHz), Math.log(scope.highestQ()), scope.boostDb()};
  }

  /** The filter with everything held within bounds. */
  PeakFilter held(PeakFilter filter) {
    return filters(free(List.of(filter))).get(0);
  }

  double[] free(List<PeakFilter> filters) {
    double[] u = new double[3 * filters.size()];
    for (int k = 0; k < filters.size(); k++) {
      PeakFilter filter = filters.get(k);
      double[] x = {Math.log(filter.frequencyHz()), Math.log(filter.q()), filter.gainDb()};
      for (int j = 0; j < 3; j++) {
        double half = (high[j] - low[j]) / 2;
        double share = half == 0 ? 0 : (x[j] - low[j] - half) / half;
        u[3 * k + j] = Math.asin(Math.max(-INSIDE, Math.min(INSIDE, share)));
      }
    }
    return u;
  }

  List<PeakFilter> filters(double[] u) {
    List<PeakFilter> filters = new ArrayList<>(u.length / 3);
    for (int k = 0; k < u.length / 3; k++) {
      filters.add(filter(u, k, -1, 0));
    }
    return filters;
  }

  /** Filter k with one of the numbers a little off. */
  PeakFilter filter(double[] u, int k, int moved, double by) {
    double[] x = new double[3];
    for (int j = 0; j < 3; j++) {
      int p = 3 * k + j;
      double half = (high[j] - low[j]) / 2;
      x[j] = low[j] + half + half * Math.sin(u[p] + (p == moved ? by : 0));
    }
    return new PeakFilter(Math.exp(x[0]), Math.exp(x[1]), x[2]);
  }
}
