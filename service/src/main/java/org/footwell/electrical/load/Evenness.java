package org.footwell.electrical.load;

import java.util.List;
import org.footwell.electrical.load.Solved.Share;

/**
 * How evenly those on a network share its power.
 *
 * @param most who takes most
 * @param least who takes least
 */
record Evenness(Portion most, Portion least) {

  /** Portions are even when they differ by less than anyone could wire or measure. */
  private static final double EVEN = 1e-6;

  /** What a coil, or a driver with all its coils, takes of the network's power. */
  record Portion(String name, double power) {}

  /** Of the coils, one or more. */
  static Evenness ofCoils(List<Share> shares) {
    return of(portions(shares));
  }

  /** Each coil by its name. */
  static List<Portion> portions(List<Share> shares) {
    return shares.stream().map(share -> new Portion(share.coil().name(), share.power())).toList();
  }

  /** Of one portion or more. */
  static Evenness of(List<Portion> portions) {
    Portion most = portions.get(0);
    Portion least = most;
    for (Portion portion : portions) {
      most = portion.power() > most.power() ? portion : most;
      least = portion.power() < least.power() ? portion : least;
    }
    return new Evenness(most, least);
  }

  /** Least power over most: 1 is even. */
  double ratio() {
    return least.power() / most.power();
  }

  boolean even() {
    return most.power() <= least.power() * (1 + EVEN);
  }
}
