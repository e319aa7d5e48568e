package org.footwell.physics;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.footwell.calculation.Source;

/** Mid-band frequencies of third octaves: exact ones, of which the nominal ones are roundings. */
public final class ThirdOctaves {

  public static final Source IEC_61260_1 =
      Source.of(
          "IEC 61260-1:2014, Octave-band and fractional-octave-band filters: exact mid-band"
              + " frequencies, base ten");

  /** The nominal frequencies lie within this of the exact ones; 16 and 160 Hz are farthest. */
  private static final double ROUNDED_BY = 0.01;

  private static final double REFERENCE_HZ = 1000;

  /** Nominal frequencies of a decade: the preferred numbers of ISO 3, series R10. */
  private static final double[] NOMINAL = {1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8};

  private ThirdOctaves() {}

  /** The exact frequency in Hz where one that rounds to it is given; any other stays as it is. */
  public static double exactHz(double givenHz) {
    double exact = midBandHz((int) Math.round(10 * Math.log10(givenHz / REFERENCE_HZ)));
    return Math.abs(givenHz / exact - 1) <= ROUNDED_BY ? exact : givenHz;
  }

  /** The nominal frequency in Hz of an exact mid-band. */
  public static double nominalHz(double exactHz) {
    int n = (int) Math.round(10 * Math.log10(exactHz));
    return NOMINAL[Math.floorMod(n, 10)] * Math.pow(10, Math.floorDiv(n, 10));
  }

  /** Exact mid-band frequencies in Hz whose bands' middles, nominal or exact, lie in a range. */
  public static DoubleStream between(double fromHz, double toHz) {
    double low = exactHz(fromHz) * (1 - 1e-9);
    double high = exactHz(toHz) * (1 + 1e-9);
    return IntStream.rangeClosed(-30, 21)
        .mapToDouble(ThirdOctaves::midBandHz)
        .filter(f -> f >= low && f <= high);
  }

  /** The band n third octaves above that of 1 kHz. */
  private static double midBandHz(int n) {
    return REFERENCE_HZ * Math.pow(10, n / 10.0);
  }
}
