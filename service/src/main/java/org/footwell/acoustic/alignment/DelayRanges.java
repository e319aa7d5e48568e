package org.footwell.acoustic.alignment;

import java.util.ArrayList;
import java.util.List;

/**
 * Ranges of delays in ms that do not overlap, ascending.
 *
 * @param all lower and upper end of each
 */
record DelayRanges(List<Range> all) {

  static final DelayRanges NONE = new DelayRanges(List.of());

  /** Nearer by less than this part is not nearer: of two alike the later one is taken. */
  private static final double ALIKE = 1e-6;

  /** One of them. */
  record Range(double from, double to) {}

  /** All delays up to one, either way. */
  static DelayRanges upTo(double eitherWayMs) {
    return new DelayRanges(List.of(new Range(-eitherWayMs, eitherWayMs)));
  }

  /** What of them lies near a middle, or a whole number of periods from it. */
  DelayRanges around(double middle, double period, double eitherWay) {
    List<Range> left = new ArrayList<>();
    for (Range range : all) {
      long first = (long) Math.ceil((range.from - eitherWay - middle) / period);
      long last = (long) Math.floor((range.to + eitherWay - middle) / period);
      for (long k = first; k <= last; k++) {
        double centre = middle + k * period;
        left.add(
            new Range(
                Math.max(range.from, centre - eitherWay), Math.min(range.to, centre + eitherWay)));
      }
    }
    return new DelayRanges(left);
  }

  boolean none() {
    return all.isEmpty();
  }

  /** The delay among them that is nearest to 0; 0 if there are none. */
  double nearestToNone() {
    double later = Double.POSITIVE_INFINITY;
    double earlier = Double.POSITIVE_INFINITY;
    for (Range range : all) {
      if (range.to >= 0) {
        later = Math.min(later, Math.max(0, range.from));
      }
      if (range.from <= 0) {
        earlier = Math.min(earlier, Math.max(0, -range.to));
      }
    }
    if (all.isEmpty()) {
      return 0;
    }
    return later <= earlier * (1 + ALIKE) ? later : -earlier;
  }
}
