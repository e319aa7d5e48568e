package org.footwell.load;

import java.util.List;
import org.footwell.load.Solved.Share;

/**
 * How evenly the coils of a network share its power.
 *
 * @param most the coil that takes most
 * @param least the coil that takes least
 */
record Evenness(Share most, Share least) {

  /** Shares are even when they differ by less than anyone could wire or measure. */
  private static final double EVEN = 1e-6;

  /** Of one share or more. */
  static Evenness of(List<Share> shares) {
    Share most = shares.get(0);
    Share least = most;
    for (Share share : shares) {
      most = share.power() > most.power() ? share : most;
      least = share.power() < least.power() ? share : least;
    }
    return new Evenness(most, least);
  }

  /** Power of the coil that takes least over that of the one that takes most: 1 is even. */
  double ratio() {
    return least.power() / most.power();
  }

  boolean even() {
    return most.power() <= least.power() * (1 + EVEN);
  }
}
