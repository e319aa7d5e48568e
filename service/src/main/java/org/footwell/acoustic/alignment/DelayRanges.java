package org.footwell.acoustic.alignment;

import java.util.Arrays;

/** Ranges of delays in ms that do not overlap, ascending. */
final class DelayRanges {

  static final DelayRanges NONE = new DelayRanges();

  /** Nearer by less than this part is not nearer: of two alike the later one is taken. */
  private static final double ALIKE = 1e-6;

  /** Lower and upper end of each in turn. */
  private final double[] ends;

  private DelayRanges(double... ends) {
    this.ends = ends;
  }

  /** All delays up to one, either way. */
  static DelayRanges upTo(double eitherWayMs) {
    return new DelayRanges(-eitherWayMs, eitherWayMs);
  }

  /** What of them lies near a middle, or a whole number of periods from it. */
  DelayRanges around(double middle, double period, double eitherWay) {
    double[] left = NONE.ends;
    for (int i = 0; i < ends.length; i += 2) {
      double from = ends[i];
      double to = ends[i + 1];
      long first = (long) Math.ceil((from - eitherWay - middle) / period);
      long last = (long) Math.floor((to + eitherWay - middle) / period);
      for (long k = first; k <= last; k++) {
        double centre = middle + k * period;
        left = Arrays.copyOf(left, left.length + 2);
        left[left.length - 2] = Math.max(from, centre - eitherWay);
        left[left.length - 1] = Math.min(to, centre + eitherWay);
      }
    }
    return new DelayRanges(left);
  }

  boolean none() {
    return ends.length == 0;
  }

  /** The delay among them that is nearest to 0; 0 if there are none. */
  double nearestToNone() {
    if (none()) {
      return 0;
    }
    double later = Double.POSITIVE_INFINITY;
    double earlier = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ends.length; i += 2) {
      if (ends[i + 1] >= 0) {
        later = Math.min(later, Math.max(0, ends[i]));
      }
      if (ends[i] <= 0) {
        earlier = Math.min(earlier, Math.max(0, -ends[i + 1]));
      }
    }
    return later <= earlier * (1 + ALIKE) ? later : -earlier;
  }
}
