package org.footwell.electrical.supply;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.electrical.supply.SupplyCableResult.FuseSeries;

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
              + " bolt-down strips, 30 to 500 A (rated values and opening times typed from memory)");

  /** Rated currents of blade type C, A; lists of values disagree on 35 A. */
  private static final double[] BLADE = {1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35};

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

  /** What a fuse carries without opening, over its rating: ISO 8820-3, from memory. */
  static final double STAYS_CLOSED = 1.1;

  /** Least rating in A for a full sine of I amperes that lasts, in a place with heat k. */
  static final Formula.Of2 LEAST_FOR_SINE =
      Formula.of("least_fuse_for_sine_a", "I/(1.1·k)", "A", ISO_8820)
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
    return Stream.of(BLADE, BOTH, STRIP)
        .flatMapToDouble(DoubleStream::of)
        .filter(rating -> rating <= most)
        .max()
        .orElse(0);
  }

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
