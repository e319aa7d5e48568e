package org.footwell.measured.correction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.optim.ConvergenceChecker;
import org.apache.commons.math3.util.Pair;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Source;

/**
 * Fits filters by least squares: one after the other where most is missing, all of them together
 * after each.
 */
final class FilterFit {

  static final Source LEVENBERG_MARQUARDT =
      Source.of(
          "D. W. Marquardt, An algorithm for least-squares estimation of nonlinear parameters,"
              + " Journal of SIAM 11 (1963); by Apache Commons Math 3.6.1");

  /** Less is not worth a filter, dB; common practice. */
  private static final double LEAST_GAIN_DB = 0.25;

  private static final double SMALL_ERROR_DB = 0.3;
  private static final int ROUGH_STEPS = 6;
  private static final int FINE_STEPS = 40;
  private static final double SETTLED = 1e-4;
  private static final int MOST_EVALUATIONS = 2000;

  private final Wanted wanted;
  private final FilterBounds bounds;
  private final Arithmetic arithmetic;
  private final double fromHz;
  private final double toHz;

  private FilterFit(Wanted wanted, Arithmetic arithmetic) {
    this.wanted = wanted;
    this.fromHz = Math.max(wanted.scope().fromHz(), wanted.frequencyHz(0));
    this.toHz = Math.min(wanted.scope().toHz(), wanted.frequencyHz(wanted.size() - 1));
    this.bounds = new FilterBounds(wanted.scope(), fromHz, toHz);
    this.arithmetic = arithmetic;
  }

  /** The filters, rising in frequency; none if nothing is worth one. */
  static List<PeakFilter> of(Wanted wanted, Arithmetic arithmetic) {
    return new FilterFit(wanted, arithmetic).filters();
  }

  private List<PeakFilter> filters() {
    List<PeakFilter> filters = new ArrayList<>();
    while (filters.size() < wanted.scope().count()) {
      PeakFilter next = next(wanted.missing(wanted.sum(filters)));
      if (next == null) {
        break;
      }
      filters.add(next);
      filters = fitted(filters, ROUGH_STEPS);
    }
    filters = fitted(filters, FINE_STEPS);
    filters = new ArrayList<>(filters);
    filters.removeIf(filter -> Math.abs(filter.gainDb()) < LEAST_GAIN_DB);
    withinLimits(filters);
    withGainOnly(filters);
    filters.sort(Comparator.comparingDouble(PeakFilter::frequencyHz));
    return filters;
  }

  /** A first guess for a filter where most is missing; null if little is anywhere. */
  private PeakFilter next(double[] missing) {
    int bestFrom = -1;
    int bestTo = -1;
    double most = 0;
    int from = 0;
    for (int i = 1; i <= missing.length; i++) {
      if (i == missing.length || missing[i] > 0 != missing[from] > 0) {
        double squares = 0;
        for (int k = from; k < i; k++) {
          squares += centred(k) ? missing[k] * missing[k] : 0;
        }
        if (squares > most) {
          most = squares;
          bestFrom = from;
          bestTo = i;
        }
        from = i;
      }
    }
    return bestFrom < 0 ? null : guess(missing, bestFrom, bestTo);
  }

  private boolean centred(int i) {
    double f = wanted.frequencyHz(i);
    return f >= fromHz && f <= toHz;
  }

  private PeakFilter guess(double[] missing, int from, int to) {
    int peak = from;
    for (int k = from; k < to; k++) {
      peak = centred(k) && Math.abs(missing[k]) > Math.abs(missing[peak]) ? k : peak;
    }
    if (Math.abs(missing[peak]) < SMALL_ERROR_DB) {
      return null;
    }
    int low = peak;
    while (low > from && Math.abs(missing[low - 1]) > Math.abs(missing[peak]) / 2) {
      low--;
    }
    int high = peak;
    while (high < to - 1 && Math.abs(missing[high + 1]) > Math.abs(missing[peak]) / 2) {
      high++;
    }
    double octaves = (high - low + 1.0) / Correction.PER_OCTAVE;
    // The bandwidth of a bell between the points of half its gain.
    double q = 1 / (2 * Math.sinh(Math.log(2) / 2 * octaves));
    double middle = Math.sqrt(wanted.frequencyHz(low) * wanted.frequencyHz(high));
    return bounds.held(new PeakFilter(middle, q, missing[peak]));
  }

  private List<PeakFilter> fitted(List<PeakFilter> filters, int steps) {
    if (filters.isEmpty()) {
      return filters;
    }
    ConvergenceChecker<LeastSquaresProblem.Evaluation> settled =
        (step, before, now) ->
            step >= steps || before.getCost() - now.getCost() <= SETTLED * before.getCost();
    LeastSquaresProblem problem =
        new LeastSquaresBuilder()
            .start(bounds.free(filters))
            .target(new double[wanted.size()])
            .model(this::model)
            .checker(settled)
            .maxEvaluations(MOST_EVALUATIONS)
            .maxIterations(MOST_EVALUATIONS)
            .build();
    Optimum optimum = new LevenbergMarquardtOptimizer().optimize(problem);
    return bounds.filters(optimum.getPoint().toArray());
  }

  private Pair<RealVector, RealMatrix> model(RealVector free) {
    arithmetic.checkDeadline();
    double[] u = free.toArray();
    List<PeakFilter> filters = bounds.filters(u);
    double[] sum = wanted.sum(filters);
    double[][] jacobian = new double[sum.length][u.length];
    double[] column = new double[sum.length];
    for (int p = 0; p < u.length; p++) {
      Arrays.fill(column, 0);
      PeakFilter here = filters.get(p / 3);
      PeakFilter moved = bounds.filter(u, p / 3, p, FilterBounds.STEP);
      here.add(column, wanted.points(), wanted.rateHz(), -1 / FilterBounds.STEP);
      moved.add(column, wanted.points(), wanted.rateHz(), 1 / FilterBounds.STEP);
      for (int i = 0; i < sum.length; i++) {
        jacobian[i][p] = column[i] * wanted.slope(i, sum[i]);
      }
    }
    return new Pair<>(
        new ArrayRealVector(wanted.residuals(sum), false),
        new Array2DRowRealMatrix(jacobian, false));
  }

  /** Takes back boosts until no limit is passed by more than what is tolerated. */
  private void withinLimits(List<PeakFilter> filters) {
    double[] sum = wanted.sum(filters);
    int worst = wanted.worst(sum);
    while (!filters.isEmpty() && wanted.passed(sum, worst) > Wanted.TOLERATED_DB) {
      int strongest = strongest(filters, worst);
      PeakFilter less = filters.get(strongest).withGain(0.8 * filters.get(strongest).gainDb());
      if (Math.abs(less.gainDb()) < LEAST_GAIN_DB) {
        filters.remove(strongest);
      } else {
        filters.set(strongest, less);
      }
      sum = wanted.sum(filters);
      worst = wanted.worst(sum);
    }
  }

  /**
   * Takes filters away until the rest bring the response nearer to the wanted curve than none. What
   * must not be lifted counts in the fit as if it were right, so a fit alone may not.
   */
  private void withGainOnly(List<PeakFilter> filters) {
    double none = wanted.error(wanted.sum(List.of()));
    while (!filters.isEmpty() && wanted.error(wanted.sum(filters)) >= none) {
      filters.remove(leastUseful(filters));
      withinLimits(filters);
    }
  }

  /** The filter without which the others do best. */
  private int leastUseful(List<PeakFilter> filters) {
    int least = 0;
    double best = Double.POSITIVE_INFINITY;
    for (int k = 0; k < filters.size(); k++) {
      List<PeakFilter> others = new ArrayList<>(filters);
      others.remove(k);
      double error = wanted.error(wanted.sum(others));
      if (error < best) {
        best = error;
        least = k;
      }
    }
    return least;
  }

  private int strongest(List<PeakFilter> filters, int point) {
    int strongest = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < filters.size(); k++) {
      double here = wanted.sum(List.of(filters.get(k)))[point];
      if (here > most) {
        most = here;
        strongest = k;
      }
    }
    return strongest;
  }
}
