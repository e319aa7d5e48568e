package org.footwell.parts;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Values that parts are made in, against tables of the standards as remembered. */
class StandardValuesTest {

  /** IEC 60063, E48, typed from memory: not made by the formula that makes ours. */
  private static final double[] E48 = {
    1.00, 1.05, 1.10, 1.15, 1.21, 1.27, 1.33, 1.40, 1.47, 1.54, 1.62, 1.69, 1.78, 1.87, 1.96, 2.05,
    2.15, 2.26, 2.37, 2.49, 2.61, 2.74, 2.87, 3.01, 3.16, 3.32, 3.48, 3.65, 3.83, 4.02, 4.22, 4.42,
    4.64, 4.87, 5.11, 5.36, 5.62, 5.90, 6.19, 6.49, 6.81, 7.15, 7.50, 7.87, 8.25, 8.66, 9.09, 9.53
  };

  @Test
  void e48IsThatOfItsTableInEveryDecade() {
    assertArrayEquals(E48, StandardValues.E48.between(1, 9.99));
    assertArrayEquals(
        DoubleStream.of(E48).map(value -> Math.rint(100 * value) * 10).toArray(),
        StandardValues.E48.between(1000, 9990));
  }

  @Test
  void everyValueOfE48IsOneOfE96() {
    double[] fine = StandardValues.E96.between(1, 9.99);
    assertEquals(96, fine.length);
    for (int i = 0; i < E48.length; i++) {
      assertEquals(E48[i], fine[2 * i]);
    }
  }

  /** ISO 3 rounds the powers of ten by no more than 1.26 %, as remembered. */
  @Test
  void preferredNumbersAreRoundedPowersOfTen() {
    double[] r40 = StandardValues.R40.between(1, 9.99);
    assertEquals(40, r40.length);
    for (int i = 0; i < r40.length; i++) {
      assertEquals(1, r40[i] / Math.pow(10, i / 40.0), 0.0127);
    }
    assertArrayEquals(new double[] {1, 1.6, 2.5, 4, 6.3, 10}, StandardValues.R5.between(1, 10));
    assertArrayEquals(
        new double[] {1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10},
        StandardValues.R10.between(1, 10));
  }

  @Test
  void bothEndsCountAndSmallNumbersAreExact() {
    assertArrayEquals(
        new double[] {0.0047, 0.0068, 0.01, 0.015}, StandardValues.E6.between(0.0047, 0.015));
    assertArrayEquals(new double[] {}, StandardValues.E6.between(1.1, 1.4));
  }

  @Test
  void cablesAndFusesEnd() {
    assertArrayEquals(new double[] {25, 35}, StandardValues.CONDUCTORS.between(17, 49));
    assertArrayEquals(new double[] {400, 450, 500}, StandardValues.FUSES.between(351, 1e6));
    assertTrue(StandardValues.E6.repeats() && !StandardValues.FUSES.repeats());
  }
}
