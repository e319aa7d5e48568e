package org.footwell.acoustic.filters;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.footwell.acoustic.filters.CrossoverFiltersResult.Better;
import org.footwell.acoustic.filters.CrossoverFiltersResult.Handover;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.Decibels;
import org.footwell.signal.CirclePoint;
import org.footwell.signal.Response;

/** Looks for the ways that hand over to each other, for where they do, and for how they sum there. */
final class HandoverSearch {

  /** Level in dB of two signals of L dB each, apart by φ degrees. */
  static final Formula.Of2 SUM_OF_EQUALS =
      Formula.of(
              "sum_db",
              "L + 20·lg(2·max(|cos(φ/2)|, 0.001))",
              "dB",
              Source.of("Sum of two sines of one frequency; 60 dB is the deepest null shown"))
          .with("L", "φ", HandoverSearch::sumOfEquals);

  /** Corners farther apart do not belong together, octaves. */
  private static final double BELONG_OCTAVES = 2;

  /** A third way this much louder than each of two is louder than both together. */
  private static final double MASKS_DB = Decibels.ofAmplitude(2);

  /** Less is the same, dB. */
  static final double SAME_DB = 0.1;

  /** How far from the other corner of a band-pass its pair is judged, as a ratio. */
  private static final double CLEAR_OF_CORNER = Math.sqrt(2);

  private final SummedWays sum;
  private final Arithmetic steps;

  HandoverSearch(SummedWays sum, Arithmetic steps) {
    this.sum = sum;
    this.steps = steps;
  }

  private static double sumOfEquals(double each, double degrees) {
    double cosine = Math.abs(Math.cos(Math.toRadians(degrees) / 2));
    double least = Decibels.toAmplitude(-SummedWays.DEEPEST_NULL_DB);
    return Math.max(Response.LOWEST_DB, each + Decibels.ofAmplitude(2 * Math.max(cosine, least)));
  }

  /** A way and one above that takes over from it. */
  record Neighbours(DesignedWay lower, DesignedWay upper) {}

  /** All that belong together, with none between them. */
  List<Neighbours> neighbours() {
    List<Neighbours> found = new ArrayList<>();
    for (DesignedWay lower : sum.ways()) {
      for (DesignedWay upper : sum.ways()) {
        if (belong(lower, upper) && !partedByAnother(lower, upper)) {
          found.add(new Neighbours(lower, upper));
        }
      }
    }
    return found;
  }

  private static boolean belong(DesignedWay lower, DesignedWay upper) {
    if (lower.lowPass() == null || upper.highPass() == null) {
      return false;
    }
    // A band-pass must not be paired with its twin, nor with what lies below it.
    boolean above = upper.bottomHz() > lower.bottomHz() && upper.topHz() > lower.topHz();
    double apart = far(lower.topHz(), upper.bottomHz());
    return above
        && apart <= BELONG_OCTAVES * Math.log(2)
        && apart < far(lower.topHz(), upper.topHz())
        && apart < far(lower.bottomHz(), upper.bottomHz());
  }

  /** Whether a way between takes over from the lower and hands over to the upper. */
  private boolean partedByAnother(DesignedWay lower, DesignedWay upper) {
    return sum.ways().stream().anyMatch(way -> belong(lower, way) && belong(way, upper));
  }

  /** Whether another way drowns both where they hand over. */
  boolean masked(Neighbours two, double crossing) {
    double each = sum.levelDb(two.lower(), crossing);
    return sum.ways().stream()
        .anyMatch(
            way ->
                way.index() != two.lower().index()
                    && way.index() != two.upper().index()
                    && sum.levelDb(way, crossing) >= each + MASKS_DB);
  }

  /** Where the levels are equal, nearest to the middle of the two corners; empty if nowhere. */
  OptionalDouble crossing(Neighbours two) {
    DesignedWay lower = two.lower();
    DesignedWay upper = two.upper();
    double middle = Math.sqrt(lower.topHz() * upper.bottomHz());
    double end = Math.min(4 * middle, 0.999 * sum.rateHz() / 2);
    double[] grid = LevelRange.grid(middle / 4, end, new double[0]);
    Double nearest = null;
    for (int i = 1; i < grid.length; i++) {
      if (lead(lower, upper, grid[i - 1]) > 0 && lead(lower, upper, grid[i]) <= 0) {
        double here =
            new BrentSolver(1e-9 * middle)
                .solve(100, f -> lead(lower, upper, f), grid[i - 1], grid[i]);
        nearest = nearest == null || far(here, middle) < far(nearest, middle) ? here : nearest;
      }
    }
    return nearest == null ? OptionalDouble.empty() : OptionalDouble.of(nearest);
  }

  private static double far(double f, double from) {
    return Math.abs(Math.log(f / from));
  }

  /** By how much the lower way is louder, dB. */
  private double lead(DesignedWay lower, DesignedWay upper, double f) {
    return sum.levelDb(lower, f) - sum.levelDb(upper, f);
  }

  /** How they sum around a frequency at which they are equally loud. */
  Handover at(Neighbours two, double crossing) {
    DesignedWay lower = two.lower();
    DesignedWay upper = two.upper();
    CirclePoint p = sum.point(crossing);
    Response low = sum.arriving(lower, p, 0);
    Response high = sum.arriving(upper, p, 0);
    double apart = high.gain().over(low.gain()).phaseDeg();
    double from = Math.max(crossing / 2, lower.bottomHz() * CLEAR_OF_CORNER);
    double to = Math.min(crossing * 2, upper.topHz() / CLEAR_OF_CORNER);
    // Where the other corners come too near, there is nothing better than a narrow band.
    from = Math.min(from, crossing / 1.1);
    to = Math.min(Math.max(to, crossing * 1.1), 0.999 * sum.rateHz() / 2);
    double[] grid = Pair.with(LevelRange.grid(from, to, sum.narrow()), crossing);
    Pair pair = new Pair(sum, lower, upper, grid);
    double asGiven = pair.trial(0, 1).spreadDb();
    double inverted = pair.trial(0, -1).spreadDb();
    double togetherMs = (low.delaySamples() - high.delaySamples()) * 1000 / sum.rateHz();
    Pair.Trial best = pair.flattest(crossing, togetherMs, SAME_DB, steps);
    return CrossoverFiltersResultHandoverBuilder.builder()
        .lower(lower.id())
        .upper(upper.id())
        .crossingHz(crossing)
        .eachDb(low.levelDb())
        .phaseDifferenceDeg(apart)
        .sumDb(steps.apply(SUM_OF_EQUALS, low.levelDb(), apart))
        .bandFromHz(from)
        .bandToHz(to)
        .spreadDb(asGiven)
        .invertedSpreadDb(inverted)
        .better(better(asGiven, inverted))
        .bestDelayMs(best.delayMs())
        .bestPolarity(best.polarity())
        .bestSpreadDb(best.spreadDb())
        .build();
  }

  private static Better better(double asGiven, double inverted) {
    if (Math.abs(asGiven - inverted) <= SAME_DB) {
      return Better.EITHER;
    }
    return asGiven < inverted ? Better.AS_GIVEN : Better.INVERTED;
  }
}
