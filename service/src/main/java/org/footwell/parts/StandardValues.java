package org.footwell.parts;

import java.math.BigDecimal;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.footwell.physics.Conductors;
import org.footwell.physics.FuseRatings;

/** Values that parts are made in. */
public enum StandardValues {
  /** Six a decade for resistors, capacitors and coils, IEC 60063. */
  E6(PreferredSeries.E6.tenths().map(tenths -> 10 * tenths)),
  /** Twelve a decade. */
  E12(PreferredSeries.E12.tenths().map(tenths -> 10 * tenths)),
  /** Twenty-four a decade. */
  E24(PreferredSeries.E24.tenths().map(tenths -> 10 * tenths)),
  /** Forty-eight a decade. */
  E48(powers(48)),
  /** Ninety-six a decade. */
  E96(powers(96)),
  /** Five preferred numbers a decade, ISO 3. */
  R5(everyOf40(8)),
  /** Ten a decade. */
  R10(everyOf40(4)),
  /** Twenty a decade. */
  R20(everyOf40(2)),
  /** Forty a decade. */
  R40(everyOf40(1)),
  /** Cross-sections of flexible conductors, mm², IEC 60228. */
  CONDUCTORS(Conductors.sizesMm2()),
  /** Rated currents of fuse-links for road vehicles, A, ISO 8820. */
  FUSES(FuseRatings.allA());

  /** What ISO 3:1973 has in one decade, in hundredths; the table was typed from memory. */
  private static final class PreferredNumbers {
    private static final int[] R40 = {
      100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280,
      300, 315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850,
      900, 950
    };
  }

  /** In hundredths those of one decade, which repeat in every other; null if they do not. */
  @SuppressWarnings("ImmutableEnumChecker") // nothing changes it
  private final int[] decade;

  @SuppressWarnings("ImmutableEnumChecker") // nothing changes it
  private final double[] all;

  StandardValues(IntStream decade) {
    this.decade = decade.toArray();
    this.all = null;
  }

  StandardValues(DoubleStream all) {
    this.decade = null;
    this.all = all.toArray();
  }

  /** Those of IEC 60063 with more than two digits: powers of ten, rounded to three. */
  private static IntStream powers(int perDecade) {
    return IntStream.range(0, perDecade)
        .map(i -> (int) Math.round(100 * Math.pow(10, (double) i / perDecade)));
  }

  private static IntStream everyOf40(int step) {
    int[] all = PreferredNumbers.R40;
    return IntStream.range(0, all.length).filter(i -> i % step == 0).map(i -> all[i]);
  }

  /** Whether they begin above 0 and have no end, so that a range of them must begin above 0 too. */
  public boolean repeats() {
    return decade != null;
  }

  /** Those from one number to another, both included; the first above 0 where they repeat. */
  public double[] between(double from, double to) {
    DoubleStream some =
        decade == null
            ? DoubleStream.of(all)
            : IntStream.rangeClosed(exponent(from) - 1, exponent(to) + 1)
                .boxed()
                .flatMapToDouble(
                    power -> IntStream.of(decade).mapToDouble(value -> of(value, power)));
    return some.filter(value -> value >= from && value <= to).toArray();
  }

  private static int exponent(double value) {
    return (int) Math.floor(Math.log10(value));
  }

  /** Hundredths of a power of ten, exactly as it is written. */
  private static double of(int hundredths, int power) {
    return BigDecimal.valueOf(hundredths, 2 - power).doubleValue();
  }
}
