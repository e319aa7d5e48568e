package org.footwell.web.request;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Numbers to so many digits, against decimal arithmetic of the JDK. */
class DigitsTest {

  private static final int NUMBERS_OF_EACH_COUNT = 80_000;

  /** Decimal digits that a double holds whatever they are. */
  private static final int SURE = 15;

  static IntStream counts() {
    return IntStream.rangeClosed(Digits.LEAST, Digits.MOST);
  }

  private static BigDecimal rounded(double value, int count) {
    return new BigDecimal(Digits.inFull(value)).round(new MathContext(count, RoundingMode.HALF_UP));
  }

  private static void assertAsDecimal(double value, int count) {
    String text = Digits.of(count).text(value);
    BigDecimal rounded = rounded(value, count);
    double nearest = Math.copySign(rounded.doubleValue(), value);
    if (Double.isInfinite(nearest)) {
      assertEquals(Digits.inFull(value), text, "the largest numbers of all stay");
      return;
    }
    assertEquals(Digits.inFull(nearest), text, () -> value + " to " + count + " digits");
    if (count <= SURE && Math.abs(value) >= Double.MIN_NORMAL) {
      assertEquals(0, rounded.compareTo(new BigDecimal(text)), () -> value + " as " + text);
    }
  }

  /** Together more than a million. */
  @ParameterizedTest
  @MethodSource("counts")
  void seededNumbersOfAllSizesAreThoseOfDecimalArithmetic(int count) {
    Random random = new Random(count);
    for (int i = 0; i < NUMBERS_OF_EACH_COUNT; i++) {
      assertAsDecimal(number(random), count);
    }
  }

  /** Any bits, sizes of everyday, few decimal digits, subnormal, and close to where rounding turns. */
  private static double number(Random random) {
    double sign = random.nextBoolean() ? 1 : -1;
    return switch (random.nextInt(6)) {
      case 0 -> finite(Double.longBitsToDouble(random.nextLong()));
      case 1 -> sign * Math.pow(10, 8 * random.nextDouble() - 3);
      case 2 -> sign * random.nextInt(10_000_000) / Math.pow(10, random.nextInt(9));
      case 3 -> sign * Double.MIN_VALUE * random.nextInt();
      case 4 -> {
        long half = 10L * random.nextInt(100_000_000) + 5;
        double turn = Double.parseDouble(half + "e" + (random.nextInt(60) - 30));
        yield sign * beside(turn, random.nextInt(5) - 2);
      }
      default -> {
        double power = Double.parseDouble("1e" + (random.nextInt(80) - 40));
        yield sign * beside(power, random.nextInt(5) - 2);
      }
    };
  }

  private static double finite(double any) {
    return Double.isFinite(any) ? any : 1;
  }

  private static double beside(double value, int steps) {
    return Double.longBitsToDouble(Double.doubleToLongBits(value) + steps);
  }

  static DoubleStream special() {
    return DoubleStream.concat(
        DoubleStream.of(
            0,
            -0.0,
            1e22,
            9.9999995,
            9_999_999.5,
            9_999_999,
            1e7,
            1e-3,
            9.999_999_9e-4,
            0.3,
            2.5,
            Double.MIN_VALUE,
            2.225073858507201E-308,
            Double.MIN_NORMAL,
            Double.MAX_VALUE,
            9_007_199_254_740_992.0),
        IntStream.rangeClosed(-323, 308).mapToDouble(i -> Double.parseDouble("1e" + i)));
  }

  @ParameterizedTest
  @MethodSource("counts")
  void cornersAreThoseOfDecimalArithmetic(int count) {
    special().forEach(value -> assertAsDecimal(value, count));
    special().forEach(value -> assertAsDecimal(-value, count));
  }

  @ParameterizedTest
  @CsvSource({
    "93.97940008672037, 6, 93.9794",
    "93.97940008672037, 4, 93.98",
    "100.0, 6, 100.0",
    "9.9999995, 7, 10.0",
    "9.9999995, 8, 9.9999995",
    "1.00005, 5, 1.0001",
    "-1.00005, 5, -1.0001",
    "1.00015, 5, 1.0002",
    "9999999.5, 7, 1.0E7",
    "1234567.8, 4, 1235000.0",
    "0.0009999999, 4, 0.001",
    "0.00012345678, 4, 1.235E-4",
    "1e22, 4, 1.0E22",
    "0.1, 17, 0.1",
    "4.9E-324, 4, 4.9E-324",
    "1.7976931348623157E308, 4, 1.7976931348623157E308",
    "0.0, 4, 0.0",
    "-0.0, 4, -0.0"
  })
  void aNumberIsRoundedAsItIsWrittenInFull(double value, int count, String text) {
    assertEquals(text, Digits.of(count).text(value));
  }

  @Test
  void withoutAskingAllDigitsStand() {
    assertEquals("93.97940008672037", Digits.ALL.text(93.97940008672037));
    assertEquals("NaN", Digits.of(4).text(Double.NaN));
    assertEquals("-Infinity", Digits.of(4).text(Double.NEGATIVE_INFINITY));
  }
}
