package org.footwell.analysis.tolerance;

import org.footwell.analysis.Said;
import org.footwell.calculation.Place;

/**
 * A number with a tolerance.
 *
 * @param said the path to it, and where that stands or what had it assumed
 * @param place where it is in the request, or null if the path leads nowhere
 * @param number what the request states; null if it states none
 * @param plusMinus in percent of the number, or in its unit
 * @param group what moves with it, or null
 * @param source where an assumed tolerance comes from; null of a stated one
 */
record Tolerated(
    Said said,
    Place place,
    Object number,
    double plusMinus,
    boolean percent,
    Distribution distribution,
    String group,
    String source) {

  boolean isAssumed() {
    return source != null;
  }

  /** The tolerance to either side in the unit of the number. */
  double around() {
    return percent ? Math.abs((Double) number) * plusMinus / 100 : plusMinus;
  }

  /**
   * The number that a share of all its true values stays below.
   *
   * @param share above 0 and below 1
   */
  double at(double share) {
    return (Double) number + around() * distribution.quantile(share);
  }
}
