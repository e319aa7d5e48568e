package org.footwell.vehicle.packages;

import org.footwell.parts.Money;

/**
 * What a package, or a part of one, is screened by.
 *
 * @param price in steps of {@link Prices}: sums are exact
 * @param massG g
 * @param reachHz lowest frequency it plays; infinite where nothing plays yet
 * @param levelDb level the quietest of its channels allows, dB; infinite where nothing plays yet
 */
record PackageFigures(long price, double massG, double reachHz, double levelDb) {

  /** Nothing yet. */
  static final PackageFigures NONE =
      new PackageFigures(0, 0, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

  /** Levels that differ by less are alike to the ear: a package is not better for it, dB. */
  private static final double LEVEL_STEPS = 1 / Money.SLIGHT_DB;

  /** Nor for playing lower by less than half a hertz; common practice, no source. */
  private static final double REACH_STEPS = 2;

  /** What something costs and weighs. */
  static PackageFigures cost(long price, double massG) {
    return new PackageFigures(price, massG, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /** What a channel does, both in steps and rounded up: the level stays a bound, the reach is kept. */
  static PackageFigures played(double reachHz, double levelDb) {
    return new PackageFigures(
        0,
        0,
        Math.ceil(reachHz * REACH_STEPS) / REACH_STEPS,
        Math.ceil(levelDb * LEVEL_STEPS) / LEVEL_STEPS);
  }

  /** Both together: sums of price and mass, the lower reach, the lower level. */
  PackageFigures and(PackageFigures other) {
    return new PackageFigures(
        price + other.price,
        massG + other.massG,
        Math.min(reachHz, other.reachHz),
        Math.min(levelDb, other.levelDb));
  }

  /** No worse in anything. */
  boolean noWorseThan(PackageFigures other) {
    return price <= other.price
        && massG <= other.massG
        && reachHz <= other.reachHz
        && levelDb >= other.levelDb;
  }
}
