package org.footwell.vehicle.packages;

/**
 * What a package, or a part of one, is screened by.
 *
 * @param price in steps of {@link Prices}: sums are exact
 * @param massG g
 * @param reachHz lowest frequency it plays; infinite where nothing plays yet
 * @param levelDb level the quietest of its channels allows, dB; infinite where nothing plays yet
 */
record Figures(long price, double massG, double reachHz, double levelDb) {

  /** Nothing yet. */
  static final Figures NONE = new Figures(0, 0, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

  /** Both together: sums of price and mass, the lower reach, the lower level. */
  Figures and(Figures other) {
    return new Figures(
        price + other.price,
        massG + other.massG,
        Math.min(reachHz, other.reachHz),
        Math.min(levelDb, other.levelDb));
  }

  /** No worse in anything. */
  boolean noWorseThan(Figures other) {
    return price <= other.price
        && massG <= other.massG
        && reachHz <= other.reachHz
        && levelDb >= other.levelDb;
  }
}
