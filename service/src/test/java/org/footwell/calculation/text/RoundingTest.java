package org.footwell.calculation.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RoundingTest {

  private final Random random = new Random(18);

  /** The JDK's decimal arithmetic is what it is held against. */
  private static void sameAsDecimal(double number, int digits) {
    BigDecimal exact =
        BigDecimal.valueOf(number).round(new MathContext(digits, RoundingMode.HALF_UP));
    assertEquals(
        0,
        exact.compareTo(Rounding.of(number, digits)),
        () -> number + " to " + digits + " digits");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 4, 6, 9})
  void numbersOfAllSizesRoundAsDecimalArithmeticDoes(int digits) {
    for (int i = 0; i < 50_000; i++) {
      double size = Math.pow(10, random.nextDouble() * 24 - 8);
      sameAsDecimal(random.nextBoolean() ? size : -size, digits);
    }
  }

  /** A number with one digit more that is a five, and its neighbours among the doubles. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 4, 6, 9})
  void halvesRoundAwayFromZeroAsTheyAreWritten(int digits) {
    long power = BigDecimal.TEN.pow(digits - 1).longValue();
    for (int i = 0; i < 20_000; i++) {
      long whole = power + (long) (random.nextDouble() * 9 * power);
      int scale = random.nextInt(14) - 4;
      double half = new BigDecimal(whole + "5").movePointLeft(scale).doubleValue();
      for (double number : new double[] {half, -half, Math.nextUp(half), Math.nextDown(half)}) {
        sameAsDecimal(number, digits);
      }
    }
  }

  @Test
  void powersOfTenAndTheirNeighboursKeepTheirSize() {
    for (int exponent = -9; exponent < 13; exponent++) {
      double power = Double.parseDouble("1e" + exponent);
      for (double number : new double[] {power, Math.nextUp(power), Math.nextDown(power)}) {
        sameAsDecimal(number, 4);
      }
    }
    sameAsDecimal(0, 4);
  }
}
