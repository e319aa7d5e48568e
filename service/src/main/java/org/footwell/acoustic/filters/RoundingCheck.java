package org.footwell.acoustic.filters;

import static org.footwell.acoustic.filters.FiltersFinding.COEFFICIENT_OUT_OF_RANGE;
import static org.footwell.acoustic.filters.FiltersFinding.ROUNDED_UNSTABLE;
import static org.footwell.acoustic.filters.FiltersFinding.ROUNDING_CHANGES_LEVEL;
import static org.footwell.acoustic.filters.FiltersFinding.SECTION_ROUNDED_AWAY;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.footwell.acoustic.filters.DesignedWay.Part;
import org.footwell.calculation.Run;
import org.footwell.signal.Biquad;
import org.footwell.signal.CirclePoint;
import org.footwell.signal.CoefficientFormat;

/** What rounded coefficients do to the ways. */
final class RoundingCheck {

  /** Errors count where a way is not further below its highest level, dB. */
  private static final double COUNTS_WITHIN_DB = 40;

  /** Common practice, no source: less is not heard and seldom measured. */
  private static final double REMARKABLE_DB = 0.5;

  private final CoefficientFormat format;
  private final SummedWays sum;
  private final Run run;

  RoundingCheck(CoefficientFormat format, SummedWays sum, Run run) {
    this.format = format;
    this.sum = sum;
    this.run = run;
  }

  /** The largest signed change of level and where; null when there is none to speak of. */
  record Change(double errorDb, double frequencyHz) {}

  /** Where to look: a grid, the points of the curve, and both ends of what a device can do. */
  static double[] places(double[] grid, double[] points, double rateHz) {
    return Stream.of(grid, points, new double[] {0, rateHz / 2})
        .flatMapToDouble(DoubleStream::of)
        .toArray();
  }

  /** Remarks on one way, and its largest error. */
  Change of(DesignedWay way, double highestDb, double[] places) {
    if (!format.rounds()) {
      return null;
    }
    boolean silent = false;
    for (Part part : way.parts()) {
      sound(way, part);
      silent |= part.rounded().silent();
    }
    if (!way.rounded().stable()) {
      return null;
    }
    Change worst = worst(way, highestDb, places);
    if (!silent && Math.abs(worst.errorDb()) > REMARKABLE_DB) {
      run.find(ROUNDING_CHANGES_LEVEL)
          .at(way.pointer())
          .value(worst.errorDb())
          .limit(REMARKABLE_DB)
          .with("frequency", worst.frequencyHz())
          .own("way", way.id());
    }
    return worst;
  }

  private void sound(DesignedWay way, Part part) {
    Biquad rounded = part.rounded();
    if (!format.holds(part.exact())) {
      run.find(COEFFICIENT_OUT_OF_RANGE)
          .at(part.pointer())
          .value(largest(part.exact()))
          .limit(format.highest())
          .with("frequency", part.frequencyHz())
          .own("way", way.id());
    }
    if (!rounded.stable()) {
      run.find(ROUNDED_UNSTABLE)
          .at(part.pointer())
          .value(rounded.poleRadius())
          .limit(1)
          .with("frequency", part.frequencyHz())
          .own("way", way.id());
    }
    if (rounded.silent() && !part.exact().silent()) {
      run.find(SECTION_ROUNDED_AWAY)
          .at(part.pointer())
          .with("frequency", part.frequencyHz())
          .own("way", way.id());
    }
  }

  /** The coefficient farthest from zero. */
  private static double largest(Biquad b) {
    return DoubleStream.of(b.b0(), b.b1(), b.b2(), b.a1(), b.a2())
        .reduce(0, (x, y) -> Math.abs(y) > Math.abs(x) ? y : x);
  }

  private Change worst(DesignedWay way, double highestDb, double[] places) {
    run.checkDeadline();
    Change worst = new Change(0, places[0]);
    for (double f : places) {
      CirclePoint p = sum.point(f);
      double exact = way.levelDb(p);
      double error = way.roundedLevelDb(p) - exact;
      if (exact >= highestDb - COUNTS_WITHIN_DB && Math.abs(error) > Math.abs(worst.errorDb())) {
        worst = new Change(error, f);
      }
    }
    return worst;
  }
}
