package org.footwell.parts;

import java.math.BigDecimal;
import java.util.stream.IntStream;
import org.footwell.calculation.Source;

/** Preferred values for resistors and capacitors; makers of coils keep to them as well. */
public enum PreferredSeries {
  /** Six values a decade. */
  E6(4),
  /** Twelve values a decade. */
  E12(2),
  /** Twenty-four values a decade. */
  E24(1);

  public static final Source IEC_60063 =
      Source.of(
          "IEC 60063:2015, Preferred number series for resistors and capacitors: E6, E12, E24");

  /** All values of E24 in one decade, tenths; E12 is every second, E6 every fourth of them. */
  private static final int[] TENTHS = {
    10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91
  };

  private final int every;

  PreferredSeries(int every) {
    this.every = every;
  }

  /** Its values in one decade, tenths. */
  public IntStream tenths() {
    return IntStream.range(0, TENTHS.length).filter(i -> i % every == 0).map(i -> TENTHS[i]);
  }

  /** The value of the series with the smallest ratio to a value above 0; no number where there is none. */
  public double nearest(double value) {
    if (value <= 0 || !Double.isFinite(value)) {
      return Double.NaN;
    }
    int decade = (int) Math.floor(Math.log10(value));
    double best = of(10, decade + 1);
    // From one decade below, in case the logarithm was rounded up.
    for (int below = decade - 1; below <= decade; below++) {
      for (int i = 0; i < TENTHS.length; i += every) {
        double candidate = of(TENTHS[i], below);
        best = ratio(candidate, value) < ratio(best, value) ? candidate : best;
      }
    }
    return best;
  }

  /** Tenths of a power of ten, exactly as it is written. */
  private static double of(int tenths, int decade) {
    return BigDecimal.valueOf(tenths, 1 - decade).doubleValue();
  }

  private static double ratio(double one, double other) {
    return Math.abs(Math.log(one / other));
  }
}
