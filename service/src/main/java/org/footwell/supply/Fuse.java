package org.footwell.supply;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.supply.SupplyCableResult.FuseSeries;

/**
 * A standard fuse-link for road vehicles.
 *
 * @param ratingA rated current, A
 * @param series what it is built like
 */
record Fuse(double ratingA, FuseSeries series) {

  /**
   * The parts of the standard and what they cover were checked against its abstracts; the list of
   * values was typed from memory.
   */
  static final Source ISO_8820 =
      Source.of(
          "ISO 8820, Road vehicles: fuse-links; part 3: blade types C and E, to 100 A; part 5:"
              + " bolt-down strips, 30 to 500 A (rated values typed from memory)");

  /** Rated currents of blade type C, A. */
  private static final double[] BLADE = {1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30};

  /** Rated currents to be had both as blade type E and as strip, A. */
  private static final double[] BOTH = {40, 50, 60, 70, 80, 100};

  /** Rated currents of strips only, A. */
  private static final double[] STRIP = {125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500};

  /** 24 A at 0.8 is 30 A, whatever the last binary digit says. */
  private static final double ROUNDING = 1e-9;

  /** Least rating in A for I amperes that flow for long, loaded to s of it in a place with heat k. */
  static final Formula.Of3 LEAST_RATING =
      Formula.of("least_fuse_a", "I/(s·k)", "A", Source.COMMON_PRACTICE)
          .with("I", "s", "k", (i, s, k) -> i / (s * k));

  /** The smallest standard fuse of at least and at most so many amperes, or null. */
  static Fuse between(double least, double most) {
    Fuse fuse = smallest(BLADE, least, FuseSeries.BLADE);
    fuse = fuse != null ? fuse : smallest(BOTH, least, FuseSeries.BLADE_OR_BOLT_DOWN);
    fuse = fuse != null ? fuse : smallest(STRIP, least, FuseSeries.BOLT_DOWN);
    return fuse == null || fuse.ratingA > most ? null : fuse;
  }

  private static Fuse smallest(double[] ratings, double least, FuseSeries series) {
    for (double rating : ratings) {
      if (rating >= least * (1 - ROUNDING)) {
        return new Fuse(rating, series);
      }
    }
    return null;
  }
}
