package org.footwell.web.request;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.calculation.text.Rounding;

/**
 * How many significant digits the numbers of an answer have: all, or so many. A number is rounded as
 * it is written to all its digits, half up and away from zero, as a reader of the full answer would
 * round it; then it is written in the same manner. So it never has more digits than in full.
 */
public final class Digits {

  public static final int LEAST = 4;

  /** No number has more. */
  public static final int MOST = 17;

  /** As many as tell a number from all others. */
  public static final Digits ALL = new Digits(0);

  /** Characters that are enough for any number. */
  public static final int LONGEST = 32;

  /** What a query may ask for. */
  static final List<String> NAMES =
      IntStream.rangeClosed(LEAST, MOST).mapToObj(Integer::toString).toList();

  /** Finding all digits: on newer JDKs the plain way is the faster, and both find the same. */
  static final boolean FAST_WRITER = Runtime.version().feature() < 19;

  /** So many digits leave room between what is computed and where rounding changes. */
  private static final int MOST_SCALED = 15;

  /** From here up to there a number is written without an exponent, as Double.toString does. */
  private static final int LEAST_PLAIN = -3;

  private static final int MOST_PLAIN = 6;

  private final int count;
  private final double limit;

  private Digits(int count) {
    this.count = count;
    this.limit = Math.pow(10, count);
  }

  /** So many digits; all where nothing is asked for. */
  static Digits of(String asked) {
    return asked == null ? ALL : of(Integer.parseInt(asked));
  }

  /** So many digits. */
  public static Digits of(int count) {
    return new Digits(count);
  }

  public boolean all() {
    return count == 0;
  }

  /** A number to all its digits, as it stands in JSON. */
  public static String inFull(double value) {
    return NumberOutput.toString(value, FAST_WRITER);
  }

  /** A number as it stands in JSON. */
  public String text(double value) {
    char[] text = new char[LONGEST];
    return new String(text, 0, put(value, text, 0));
  }

  /**
   * Writes a number as it stands in JSON.
   *
   * @return where it ends
   */
  public int put(double value, char[] into, int at) {
    if (value == 0) {
      return put(1 / value < 0 ? "-0.0" : "0.0", into, at);
    }
    double size = Math.abs(value);
    int exponent = floorOfLog10(size);
    int shift = count - 1 - exponent;
    // One less is left below, since the number may turn out to be ten times as large.
    boolean exact = Rounding.isExact(shift) && Rounding.isExact(shift - 1);
    if (all() || count > MOST_SCALED || !exact) {
      return putSlowly(value, into, at);
    }
    double scaled = Rounding.scaled(size, shift);
    if (scaled >= limit) {
      exponent++;
      scaled = Rounding.scaled(size, shift - 1);
    }
    long whole = Rounding.whole(scaled);
    if (whole == Rounding.DOUBTFUL) {
      return putSlowly(value, into, at);
    }
    int start = at;
    if (value < 0) {
      into[start++] = '-';
    }
    return whole < limit
        ? put(whole, count, exponent, into, start)
        : put(1, 1, exponent + 1, into, start);
  }

  /** The power of ten below a number, or the next: of the power of two below it. */
  private static int floorOfLog10(double size) {
    // log10(2) in 22 bits, which is exact for the exponents of all doubles.
    return (Math.getExponent(size) * 1_262_611) >> 22;
  }

  /** By decimal arithmetic, where scaling is not exact or leaves a doubt. */
  private int putSlowly(double value, char[] into, int at) {
    return put(inFull(all() ? value : rounded(value)), into, at);
  }

  private static int put(String text, char[] into, int at) {
    text.getChars(0, text.length(), into, at);
    return at + text.length();
  }

  private double rounded(double value) {
    if (!Double.isFinite(value)) {
      return value;
    }
    BigDecimal rounded =
        new BigDecimal(inFull(value)).round(new MathContext(count, RoundingMode.HALF_UP));
    double nearest = rounded.doubleValue();
    // What rounds to more than any double can be, stays.
    return Double.isFinite(nearest) ? Math.copySign(nearest, value) : value;
  }

  /** Writes digits of which the first has this power of ten. */
  private static int put(long allDigits, int count, int exponent, char[] into, int at) {
    long digits = allDigits;
    int size = count;
    while (size > 1 && digits % 10 == 0) {
      digits /= 10;
      size--;
    }
    if (exponent < LEAST_PLAIN || exponent > MOST_PLAIN) {
      int end = putWithPoint(digits, size, 1, into, at);
      into[end++] = 'E';
      String power = Integer.toString(exponent);
      power.getChars(0, power.length(), into, end);
      return end + power.length();
    }
    if (exponent >= 0) {
      return putWithPoint(digits, size, exponent + 1, into, at);
    }
    int start = at;
    into[start++] = '0';
    into[start++] = '.';
    for (int i = exponent + 1; i < 0; i++) {
      into[start++] = '0';
    }
    putWhole(digits, into, start, start + size);
    return start + size;
  }

  /** Writes digits with so many before the point, and at least one behind it. */
  private static int putWithPoint(long digits, int size, int before, char[] into, int at) {
    int point = at + before;
    int end = at + size;
    if (size <= before) {
      putWhole(digits, into, at, end);
      while (end < point) {
        into[end++] = '0';
      }
      into[end++] = '.';
      into[end++] = '0';
      return end;
    }
    long rest = putWhole(digits, into, point + 1, end + 1);
    into[point] = '.';
    putWhole(rest, into, at, point);
    return end + 1;
  }

  /** Writes the last digits of a whole number between two places; what is before them is left. */
  private static long putWhole(long digits, char[] into, int from, int to) {
    long rest = digits;
    for (int i = to - 1; i >= from; i--) {
      long next = rest / 10;
      into[i] = (char) ('0' + (int) (rest - 10 * next));
      rest = next;
    }
    return rest;
  }
}
