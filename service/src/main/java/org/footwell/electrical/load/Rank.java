package org.footwell.electrical.load;

import java.util.Comparator;

/**
 * What decides the order of networks. Numbers are logarithms in steps too small to matter, so that
 * only a real difference tells two networks apart, not the last digits of the arithmetic.
 *
 * @param even whether all coils take the same power
 * @param strength clean power, or the inverse load without an amplifier to tell
 * @param evenness ratio of the smallest to the largest share
 * @param load rated load
 * @param groups groups in series and parallel
 */
record Rank(boolean even, long strength, long evenness, long load, int groups) {

  private static final double STEP = 1e-9;

  /**
   * Even sharing first, then what gets most power: without an amplifier to tell, the lowest load,
   * for a given voltage gives it most. Of equals the more even, then the higher load, which takes
   * less current, then the simpler.
   */
  static final Comparator<Rank> BEST_FIRST =
      Comparator.comparing(Rank::even)
          .thenComparingLong(Rank::strength)
          .thenComparingLong(Rank::evenness)
          .thenComparingLong(Rank::load)
          .thenComparing(Comparator.comparingInt(Rank::groups).reversed())
          .reversed();

  /**
   * The rank of a network.
   *
   * @param powerW clean power into it, or null
   */
  static Rank of(Solved wiring, Evenness evenness, Double powerW) {
    long load = steps(wiring.ohm());
    return new Rank(
        evenness.even(),
        powerW == null ? -load : steps(powerW),
        steps(evenness.ratio()),
        load,
        wiring.groups());
  }

  private static long steps(double positive) {
    return Math.round(Math.log(positive) / STEP);
  }
}
