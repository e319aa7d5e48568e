package org.footwell.calculation;

/**
 * A pure function of the trade, declared once.
 *
 * <p>Implementations hold no state; the same request gives the same result on the same version.
 *
 * @param <Q> request record, with Jakarta constraints and a {@code @Schema} text on every component
 * @param <R> result record
 */
public interface Calculation<Q extends Record, R extends Record> {

  /** What the calculation is, for everything that is derived from it. */
  Card<Q, R> card();

  /**
   * Computes the result of a valid request.
   *
   * @param request satisfies every constraint and rule of its record and those beside the calculation
   * @param run notes steps and findings, and knows the deadline
   * @throws Refused if the request cannot be answered
   */
  R compute(Q request, Run run);
}
