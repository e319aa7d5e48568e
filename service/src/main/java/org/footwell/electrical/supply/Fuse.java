package org.footwell.electrical.supply;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.electrical.supply.SupplyCableResult.FuseSeries;
import org.footwell.physics.FuseRatings;

/**
 * A standard fuse-link for road vehicles.
 *
 * @param ratingA rated current, A
 * @param series what it is built like
 */
record Fuse(double ratingA, FuseSeries series) {

  /** 24 A at 0.8 is 30 A, whatever the last binary digit says. */
  private static final double ROUNDING = 1e-9;

  /** Least rating in A for I amperes that flow for long, loaded to s of it in a place with heat k. */
  static final Formula.Of3 LEAST_RATING =
      Formula.of("least_fuse_a", "I/(s·k)", "A", Source.COMMON_PRACTICE)
          .with("I", "s", "k", (i, s, k) -> i / (s * k));

  /** What a fuse carries without opening, over its rating: ISO 8820-3, from memory. */
  static final double STAYS_CLOSED = 1.1;

  /** Least rating in A for a full sine of I amperes that lasts, in a place with heat k. */
  static final Formula.Of2 LEAST_FOR_SINE =
      Formula.of("least_fuse_for_sine_a", "I/(1.1·k)", "A", FuseRatings.ISO_8820)
          .with("I", "k", (i, k) -> i / (STAYS_CLOSED * k));

  /**
   * When a blade fuse of type C opens.
   *
   * @param ratio current over what the fuse carries where it sits
   * @param soonestS not before, s
   * @param latestS not after, s
   */
  record OpeningTime(double ratio, double soonestS, double latestS) {

    /** ISO 8820-3, type C, from memory. Type E opens later, strips have times of their own. */
    private static final List<OpeningTime> TYPE_C =
        List.of(
            new OpeningTime(1.35, 0.75, 600),
            new OpeningTime(1.6, 0.25, 50),
            new OpeningTime(2, 0.15, 5),
            new OpeningTime(3.5, 0.04, 0.5),
            new OpeningTime(6, 0.02, 0.1));

    /** Between rows the earlier and the later of both; null below them, where it may stay closed. */
    static OpeningTime at(double ratio) {
      OpeningTime below = null;
      for (OpeningTime row : TYPE_C) {
        if (row.ratio() > ratio) {
          return below == null ? null : new OpeningTime(ratio, row.soonestS(), below.latestS());
        }
        below = row;
      }
      return new OpeningTime(ratio, 0, below.latestS());
    }
  }

  /** The largest standard fuse of at most so many amperes; 0 where there is none. */
  static double largestUpTo(double most) {
    return FuseRatings.allA().filter(rating -> rating <= most).max().orElse(0);
  }

  /** The smallest standard fuse of at least and at most so many amperes, or null. */
  static Fuse between(double least, double most) {
    return Stream.of(
            of(FuseRatings.bladesA(), FuseSeries.BLADE),
            of(FuseRatings.bladesOrStripsA(), FuseSeries.BLADE_OR_BOLT_DOWN),
            of(FuseRatings.stripsA(), FuseSeries.BOLT_DOWN))
        .flatMap(fuses -> fuses)
        .filter(fuse -> fuse.ratingA() >= least * (1 - ROUNDING))
        .findFirst()
        .filter(fuse -> fuse.ratingA() <= most)
        .orElse(null);
  }

  private static Stream<Fuse> of(DoubleStream ratings, FuseSeries series) {
    return ratings.mapToObj(rating -> new Fuse(rating, series));
  }
}
