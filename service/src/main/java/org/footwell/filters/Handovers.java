package org.footwell.filters;

import static org.footwell.filters.FiltersFinding.DELAY_SUMS_BETTER;
import static org.footwell.filters.FiltersFinding.NO_CROSSING;
import static org.footwell.filters.FiltersFinding.POLARITY_SUMS_BETTER;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.filters.CrossoverFiltersResult.Better;
import org.footwell.filters.CrossoverFiltersResult.Handover;
import org.footwell.physics.Decibels;
import org.footwell.signal.CirclePoint;
import org.footwell.signal.Response;

/** Where one way hands over to the next, and how they sum there. */
final class Handovers {

  /** Level in dB of two signals of L dB each, apart by φ degrees. */
  static final Formula.Of2 SUM_OF_EQUALS =
      Formula.of(
              "sum_db",
              "L + 20·lg(2·|cos(φ/2)|)",
              "dB",
              Source.of("Sum of two sines of one frequency"))
          .with("L", "φ", Handovers::sumOfEquals);

  /** Corners farther apart do not belong together, octaves. */
  private static final double BELONG_OCTAVES = 2;

  /** Less is no reason to change anything, dB; common practice. */
  private static final double GAIN_DB = 0.5;

  /** Less is the same, dB. */
  private static final double SAME_DB = 0.1;

  /** How far from the other corner of a band-pass its pair is judged, as a ratio. */
  private static final double CLEAR_OF_CORNER = Math.sqrt(2);

  private final SummedWays sum;
  private final Run run;

  Handovers(SummedWays sum, Run run) {
    this.sum = sum;
    this.run = run;
  }

  private static double sumOfEquals(double each, double degrees) {
    double cosine = Math.abs(Math.cos(Math.toRadians(degrees) / 2));
    return Math.max(Response.LOWEST_DB, each + Decibels.ofAmplitude(2 * cosine));
  }

  List<Handover> all(List<DesignedWay> ways) {
    List<Handover> found = new ArrayList<>();
    for (DesignedWay lower : ways) {
      for (DesignedWay upper : ways) {
        if (belong(lower, upper)) {
          add(found, lower, upper);
        }
      }
    }
    return found;
  }

  private static boolean belong(DesignedWay lower, DesignedWay upper) {
    if (lower.index() == upper.index()
        || lower.way().lowPass() == null
        || upper.way().highPass() == null) {
      return false;
    }
    double low = lower.way().lowPass().frequencyHz();
    double high = upper.way().highPass().frequencyHz();
    // A band-pass must not be paired with its twin, nor with what lies below it.
    boolean above = bottom(upper) > bottom(lower) && top(upper) > top(lower);
    return above && Math.abs(Math.log(low / high) / Math.log(2)) <= BELONG_OCTAVES;
  }

  private static double bottom(DesignedWay way) {
    return way.way().highPass() == null ? 0 : way.way().highPass().frequencyHz();
  }

  private static double top(DesignedWay way) {
    return way.way().lowPass() == null
        ? Double.POSITIVE_INFINITY
        : way.way().lowPass().frequencyHz();
  }

  private void add(List<Handover> found, DesignedWay lower, DesignedWay upper) {
    Double crossing = crossing(lower, upper);
    if (crossing == null) {
      run.find(NO_CROSSING).at(upper.pointer()).with("lower", lower.id()).with("upper", upper.id());
      return;
    }
    found.add(handover(lower, upper, crossing));
  }

  /** Where the levels are equal, nearest to the middle of the two corners; null if nowhere. */
  private Double crossing(DesignedWay lower, DesignedWay upper) {
    double middle = Math.sqrt(top(lower) * bottom(upper));
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
    return nearest;
  }

  private static double far(double f, double from) {
    return Math.abs(Math.log(f / from));
  }

  /** By how much the lower way is louder, dB. */
  private double lead(DesignedWay lower, DesignedWay upper, double f) {
    CirclePoint p = sum.point(f);
    return sum.arriving(lower, p, 0).levelDb() - sum.arriving(upper, p, 0).levelDb();
  }

  private Handover handover(DesignedWay lower, DesignedWay upper, double crossing) {
    CirclePoint p = sum.point(crossing);
    Response low = sum.arriving(lower, p, 0);
    Response high = sum.arriving(upper, p, 0);
    double apart = high.gain().over(low.gain()).phaseDeg();
    double from = Math.max(crossing / 2, bottom(lower) * CLEAR_OF_CORNER);
    double to = Math.min(crossing * 2, top(upper) / CLEAR_OF_CORNER);
    // Where the other corners come too near, there is nothing better than a narrow band.
    from = Math.min(from, crossing / 1.1);
    to = Math.min(Math.max(to, crossing * 1.1), 0.999 * sum.rateHz() / 2);
    double[] grid = Pair.with(LevelRange.grid(from, to, sum.narrow()), crossing);
    Pair pair = new Pair(sum, lower, upper, grid);
    double asGiven = pair.trial(0, 1).spreadDb();
    double inverted = pair.trial(0, -1).spreadDb();
    Pair.Trial best = pair.flattest(crossing, SAME_DB, run);
    Handover handover =
        new Handover(
            lower.id(),
            upper.id(),
            crossing,
            low.levelDb(),
            apart,
            run.apply(SUM_OF_EQUALS, low.levelDb(), apart),
            from,
            to,
            asGiven,
            inverted,
            better(asGiven, inverted),
            best.delayMs(),
            best.polarity(),
            best.spreadDb());
    remark(handover, upper);
    return handover;
  }

  private static Better better(double asGiven, double inverted) {
    if (Math.abs(asGiven - inverted) <= SAME_DB) {
      return Better.EITHER;
    }
    return asGiven < inverted ? Better.AS_GIVEN : Better.INVERTED;
  }

  private void remark(Handover h, DesignedWay upper) {
    if (h.invertedSpreadDb() < h.spreadDb() - GAIN_DB) {
      run.find(POLARITY_SUMS_BETTER)
          .at(upper.pointer() + "/polarity")
          .value(h.spreadDb())
          .limit(h.invertedSpreadDb())
          .with("frequency", h.crossingHz())
          .with("lower", h.lower())
          .with("upper", h.upper());
    }
    if (h.bestSpreadDb() < Math.min(h.spreadDb(), h.invertedSpreadDb()) - GAIN_DB) {
      run.find(DELAY_SUMS_BETTER)
          .at(upper.pointer() + "/delay_ms")
          .value(h.spreadDb())
          .limit(h.bestSpreadDb())
          .with("way", h.bestDelayMs() > 0 ? h.upper() : h.lower())
          .with("delay", Math.abs(h.bestDelayMs()))
          .with("inverted", h.bestPolarity() < 0 ? " with one of them inverted" : "")
          .with("frequency", h.crossingHz())
          .with("lower", h.lower())
          .with("upper", h.upper());
    }
  }
}
