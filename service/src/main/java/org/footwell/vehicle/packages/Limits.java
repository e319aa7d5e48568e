package org.footwell.vehicle.packages;

/**
 * What the wishes ask of the figures of a package; none is no limit.
 *
 * @param price at most, in steps of {@link Prices}
 * @param massG at most
 * @param reachHz at most
 * @param levelDb of the quietest channel, at least
 */
record Limits(long price, double massG, double reachHz, double levelDb) {

  /** No limit at all. */
  static final Limits NONE =
      new Limits(
          Long.MAX_VALUE,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  /**
   * Of wishes.
   *
   * @param togetherDb what all channels are above the quietest at most, dB
   */
  static Limits of(Wishes wishes, double togetherDb) {
    return new Limits(
        wishes.budget() == null ? NONE.price : Prices.of(wishes.budget()),
        wishes.massChangeG() == null ? NONE.massG : wishes.massChangeG() + ROUNDING_G,
        wishes.lowestHz() == null ? NONE.reachHz : wishes.lowestHz(),
        wishes.levelDbSpl() == null ? NONE.levelDb : wishes.levelDbSpl() - togetherDb);
  }

  /** Sums of masses may differ from the decimal ones in the last binary digits. */
  private static final double ROUNDING_G = 1e-6;

  /** Whether figures are within all of them. */
  boolean allow(PackageFigures figures) {
    return allow(figures, Aim.PRICE)
        && allow(figures, Aim.MASS)
        && allow(figures, Aim.REACH)
        && allow(figures, Aim.LEVEL);
  }

  /** Whether they are within one. */
  boolean allow(PackageFigures figures, Aim aim) {
    return switch (aim) {
      case PRICE -> figures.price() <= price;
      case MASS -> figures.massG() <= massG;
      case REACH -> figures.reachHz() <= reachHz;
      case LEVEL -> figures.levelDb() >= levelDb;
    };
  }

  /** Whether there is a limit in something. */
  boolean limits(Aim aim) {
    return switch (aim) {
      case PRICE -> price < NONE.price;
      case MASS -> massG < NONE.massG;
      case REACH -> reachHz < NONE.reachHz;
      case LEVEL -> levelDb > NONE.levelDb;
    };
  }
}
