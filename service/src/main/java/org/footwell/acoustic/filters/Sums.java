package org.footwell.acoustic.filters;

import static org.footwell.acoustic.filters.FiltersFinding.LEVEL_FALLS_AT_HEIGHT;
import static org.footwell.acoustic.filters.FiltersFinding.SUM_SHAPED;
import static org.footwell.acoustic.filters.FiltersFinding.SUM_UNEVEN;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Listening;
import org.footwell.acoustic.filters.CrossoverFiltersResult.AtHeight;
import org.footwell.acoustic.filters.CrossoverFiltersResult.Inverted;
import org.footwell.acoustic.filters.CrossoverFiltersResult.LevelPoint;
import org.footwell.acoustic.filters.CrossoverFiltersResult.Sum;
import org.footwell.acoustic.filters.CrossoverFiltersResult.SumPoint;
import org.footwell.acoustic.filters.SummedWays.Change;
import org.footwell.calculation.Run;
import org.footwell.parts.Filter;
import org.footwell.signal.Response;

/** How flat the sum of all ways is: as it is, with one inverted, at other heights. */
final class Sums {

  /** Common practice, no source. */
  private static final double REMARKABLE_DB = 3;

  private final CrossoverFiltersRequest q;
  private final List<DesignedWay> ways;
  private final SummedWays sum;
  private final double from;
  private final double to;
  private final double[] grid;
  private final double[] points;
  private final Run run;

  Sums(
      CrossoverFiltersRequest q, List<DesignedWay> ways, SummedWays sum, double[] points, Run run) {
    this.q = q;
    this.ways = ways;
    this.sum = sum;
    this.points = points;
    this.run = run;
    double bottom = q.flatFromHz() == null ? bottom() : q.flatFromHz();
    double top = q.flatToHz() == null ? top() : q.flatToHz();
    boolean usable = bottom < top;
    this.from = usable ? bottom : q.frequencies().fromHz();
    this.to = usable ? top : q.frequencies().toHz();
    this.grid = LevelRange.grid(from, to, sum.narrow());
  }

  private double bottom() {
    double start = q.frequencies().fromHz();
    boolean open = ways.stream().anyMatch(way -> way.highPass() == null);
    OptionalDouble lowest =
        ways.stream()
            .map(DesignedWay::highPass)
            .filter(filter -> filter != null)
            .mapToDouble(Filter::frequencyHz)
            .min();
    return open || lowest.isEmpty() ? start : Math.max(start, 2 * lowest.getAsDouble());
  }

  private double top() {
    double end = q.frequencies().toHz();
    boolean open = ways.stream().anyMatch(way -> way.lowPass() == null);
    OptionalDouble highest =
        ways.stream()
            .map(DesignedWay::lowPass)
            .filter(filter -> filter != null)
            .mapToDouble(Filter::frequencyHz)
            .max();
    return open || highest.isEmpty() ? end : Math.min(end, highest.getAsDouble() / 2);
  }

  Sum result() {
    LevelRange range = range(Change.NONE);
    if (ways.size() > 1 && range.spreadDb() > REMARKABLE_DB) {
      run.find(shaped() ? SUM_SHAPED : SUM_UNEVEN)
          .at("/ways")
          .value(range.spreadDb())
          .limit(REMARKABLE_DB)
          .with("from", from)
          .with("to", to)
          .with("frequency", range.lowestHz());
    }
    return CrossoverFiltersResultSumBuilder.builder()
        .bandFromHz(from)
        .bandToHz(to)
        .highestDb(range.highestDb())
        .highestHz(range.highestHz())
        .lowestDb(range.lowestDb())
        .lowestHz(range.lowestHz())
        .spreadDb(range.spreadDb())
        .inverted(ways.size() > 1 ? ways.stream().map(this::inverted).toList() : null)
        .points(points())
        .build();
  }

  /** Whether levels are set on purpose: then an uneven sum need not be a fault. */
  private boolean shaped() {
    double gain = q.ways().get(0).gainDb();
    return q.ways().stream().anyMatch(way -> way.gainDb() != gain)
        || q.sections().stream().anyMatch(section -> section.kind().takesGain());
  }

  private Inverted inverted(DesignedWay way) {
    LevelRange range = range(Change.inverting(way.bit()));
    return new Inverted(way.id(), range.spreadDb(), range.lowestDb(), range.lowestHz());
  }

  /** The range of levels in the band that is judged. */
  LevelRange range(Change change) {
    return LevelRange.of(f -> sum.levelDb(f, change, 0), grid, run);
  }

  private List<SumPoint> points() {
    run.checkDeadline();
    List<SumPoint> all = new ArrayList<>(points.length);
    for (double f : points) {
      Response here = sum.at(sum.point(f));
      double delay = here.delaySamples() * 1000 / q.rateHz();
      all.add(
          new SumPoint(
              f, sum.levelDb(f), here.phaseDeg(), Double.isFinite(delay) ? (Double) delay : null));
    }
    return all;
  }

  /** The sum at the further heights, or null if none is wanted. */
  List<AtHeight> heights() {
    Listening listening = q.listening();
    if (listening == null || listening.heightsM().isEmpty()) {
      return null;
    }
    List<AtHeight> all = new ArrayList<>();
    int worst = 0;
    for (int i = 0; i < listening.heightsM().size(); i++) {
      all.add(atHeight(listening.heightsM().get(i)));
      worst = all.get(i).lossDb() < all.get(worst).lossDb() ? i : worst;
    }
    if (all.get(worst).lossDb() < -REMARKABLE_DB) {
      run.find(LEVEL_FALLS_AT_HEIGHT)
          .at("/listening/heights_m/" + worst)
          .value(all.get(worst).lossDb())
          .limit(-REMARKABLE_DB)
          .with("height", all.get(worst).heightM())
          .with("frequency", all.get(worst).lossHz());
    }
    return all;
  }

  private AtHeight atHeight(double height) {
    LevelRange loss =
        LevelRange.of(f -> sum.levelDb(f, Change.NONE, height) - sum.levelDb(f), grid, run);
    List<LevelPoint> curve = new ArrayList<>(points.length);
    for (double f : points) {
      curve.add(new LevelPoint(f, sum.levelDb(f, Change.NONE, height)));
    }
    return new AtHeight(
        height,
        sum.elevationDeg(height),
        Math.max(-LevelRange.DEEPEST_DB, loss.lowestDb()),
        loss.lowestHz(),
        curve);
  }
}
