package org.footwell.calculation.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.stream.IntStream;

/**
 * Rounding to significant digits, half up and away from zero, of a number as it is written: as a scaled
 * whole number where that is sure to be right.
 */
public final class Rounding {

  /** Says that decimal arithmetic must decide. */
  public static final long DOUBTFUL = -1;

  /** Powers of ten that a double holds exactly. */
  private static final double[] TEN =
      IntStream.rangeClosed(0, 22).mapToDouble(i -> Double.parseDouble("1e" + i)).toArray();

  /**
   * How far a scaled number may be off from what is written, as a share of it: the number and the
   * product by half of their last bits, 2⁻⁵³ each, and as much to spare.
   */
  private static final double DOUBT = 0x1p-51;

  /** From here up to {@link #MOST} most numbers are; the others are rounded by decimal arithmetic. */
  private static final double LEAST = 1e-5;

  private static final double MOST = 1e10;

  private Rounding() {}

  /** Whether a double holds this power of ten, or that of the opposite sign, exactly. */
  public static boolean isExact(int power) {
    return Math.abs(power) < TEN.length;
  }

  /** A number times an exact power of ten. */
  public static double scaled(double size, int power) {
    return power >= 0 ? size * TEN[power] : size / TEN[-power];
  }

  /** The whole number nearest to a scaled one, or {@link #DOUBTFUL} where it lies between two. */
  public static long whole(double scaled) {
    long whole = (long) scaled;
    double rest = scaled - whole;
    if (Math.abs(rest - 0.5) <= scaled * DOUBT) {
      return DOUBTFUL;
    }
    return rest > 0.5 ? whole + 1 : whole;
  }

  /**
   * A number rounded.
   *
   * @param digits how many, from 1 to 9
   */
  static BigDecimal of(double number, int digits) {
    double size = Math.abs(number);
    if (isUsual(size)) {
      int decimals = digits - 1 - exponent(size);
      long whole = whole(scaled(size, decimals));
      if (whole != DOUBTFUL) {
        return BigDecimal.valueOf(number < 0 ? -whole : whole, decimals);
      }
    }
    return BigDecimal.valueOf(number).round(new MathContext(digits, RoundingMode.HALF_UP));
  }

  /** The same as a double. */
  static double rounded(double number, int digits) {
    double size = Math.abs(number);
    if (isUsual(size)) {
      int decimals = digits - 1 - exponent(size);
      long whole = whole(scaled(size, decimals));
      if (whole != DOUBTFUL) {
        return Math.copySign(scaled((double) whole, -decimals), number);
      }
    }
    return of(number, digits).doubleValue();
  }

  private static boolean isUsual(double size) {
    return size >= LEAST && size < MOST;
  }

  /** The power of ten that the first digit of a number between the two bounds stands for. */
  private static int exponent(double size) {
    int exponent = 0;
    if (size >= 1) {
      while (size >= TEN[exponent + 1]) {
        exponent++;
      }
      return exponent;
    }
    // A number below one is written with that many zeros if it is below that part of one.
    while (size < 1 / TEN[-exponent]) {
      exponent--;
    }
    return exponent;
  }
}
