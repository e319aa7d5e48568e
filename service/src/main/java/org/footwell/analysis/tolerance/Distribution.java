package org.footwell.analysis.tolerance;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.RealDistribution;
import org.apache.commons.math3.distribution.TriangularDistribution;
import org.apache.commons.math3.distribution.UniformRealDistribution;

/**
 * How a true value lies around the stated one, in parts of the stated ±.
 *
 * <p>Standard deviations for a stated ±a, by JCGM 100:2008 (GUM) 4.3.4, 4.3.7 and 4.3.9: a/1.96, a/√3
 * and a/√6.
 */
@SuppressWarnings("ImmutableEnumChecker") // laws without a random generator keep no state
public enum Distribution {
  /** Nearer is likelier; 95 of 100 lie within the stated ±, the others beyond it. */
  NORMAL(new NormalDistribution(null, 0, 1 / Estimate.NORMAL_95)),
  /** Everything within the stated ± is as likely, and nothing lies beyond: limits of an instrument. */
  UNIFORM(new UniformRealDistribution(null, -1, 1)),
  /** Nearer is likelier, and nothing lies beyond the stated ±. */
  TRIANGULAR(new TriangularDistribution(null, -1, 0, 1));

  private final RealDistribution law;

  Distribution(RealDistribution law) {
    this.law = law;
  }

  /**
   * The deviation that a share of all true values stays below.
   *
   * @param share above 0 and below 1
   * @return in parts of the stated ±
   */
  double quantile(double share) {
    return law.inverseCumulativeProbability(share);
  }

  /** Standard deviation, in parts of the stated ±. */
  double deviation() {
    return Math.sqrt(law.getNumericalVariance());
  }
}
