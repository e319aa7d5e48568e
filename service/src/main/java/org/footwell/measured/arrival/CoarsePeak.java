package org.footwell.measured.arrival;

import java.util.Arrays;

/**
 * Where in a long response the sound is, to a few milliseconds.
 *
 * @param sample where it stands out most
 * @param span the time around it worth a closer look
 */
record CoarsePeak(int sample, Span span) {

  /** Three bands, each made by two running means, and how much time their sound takes. */
  enum Span {
    /** All but the lowest frequencies: above some 3 kHz at 48 kHz. */
    SHORT(0, 0.016, 0.016),
    /** Up to 3 kHz. */
    MIDDLE(3000, 0.020, 0.060),
    /** Up to 300 Hz. */
    LONG(300, 0.060, 0.180);

    private final double upToHz;
    final double beforeS;
    final double afterS;

    Span(double upToHz, double beforeS, double afterS) {
      this.upToHz = upToHz;
      this.beforeS = beforeS;
      this.afterS = afterS;
    }

    /** The span that suits a channel which plays up to this frequency, Hz. */
    static Span upTo(double frequencyHz) {
      return frequencyHz < LONG.upToHz ? LONG : frequencyHz < MIDDLE.upToHz ? MIDDLE : SHORT;
    }

    private int meanOver(double rateHz) {
      return upToHz == 0 ? 1 : Math.max(1, (int) (rateHz / upToHz));
    }
  }

  /** The running mean that is subtracted is this many times longer. */
  private static final int LOWEST = 8;

  /** Enough samples for a median. */
  private static final int MEDIAN_OF = 2001;

  /** Looks in the span given, or in all if it is null, and takes where the peak stands out most. */
  static CoarsePeak of(double[] response, double rateHz, Span only) {
    double[] sums = new double[response.length + 1];
    for (int i = 0; i < response.length; i++) {
      sums[i + 1] = sums[i] + response[i];
    }
    CoarsePeak best = null;
    double most = -1;
    for (Span span : only == null ? Span.values() : new Span[] {only}) {
      double[] sizes = sizes(sums, span.meanOver(rateHz));
      int at = 0;
      for (int i = 1; i < sizes.length; i++) {
        at = sizes[i] > sizes[at] ? i : at;
      }
      double standsOut = sizes[at] / (median(sizes) + 1e-9 * sizes[at] + Double.MIN_NORMAL);
      if (standsOut > most) {
        most = standsOut;
        best = new CoarsePeak(at, span);
      }
    }
    return best;
  }

  private static double[] sizes(double[] sums, int length) {
    double[] sizes = new double[sums.length - 1];
    for (int i = 0; i < sizes.length; i++) {
      sizes[i] = Math.abs(mean(sums, i, length) - mean(sums, i, LOWEST * length));
    }
    return sizes;
  }

  private static double mean(double[] sums, int middle, int length) {
    int from = Math.max(0, middle - length / 2);
    int to = Math.min(sums.length - 1, middle - length / 2 + length);
    return (sums[to] - sums[from]) / length;
  }

  private static double median(double[] values) {
    int step = Math.max(1, values.length / MEDIAN_OF);
    double[] some = new double[(values.length + step - 1) / step];
    for (int i = 0; i < some.length; i++) {
      some[i] = values[i * step];
    }
    Arrays.sort(some);
    return some[some.length / 2];
  }
}
