package org.footwell.calculation.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A number of what is allowed or was given, as it is written: with all its digits, and in its own unit without one. For
 * who reads other units it is converted and has its unit behind it.
 *
 * @param text the number
 * @param measure what it is in, or null
 * @param inward how a bound is rounded so that it is allowed itself; null of what is no bound, which is not rounded
 */
public record Exact(String text, Measure measure, RoundingMode inward) implements ToldTo {

  private static final MathContext ALL = MathContext.DECIMAL64;

  /** What was given. */
  public static Exact given(double number) {
    return new Exact(String.valueOf(number), null, null);
  }

  /** The lower end of a range. */
  public static Exact least(String number, Measure measure) {
    return new Exact(number, measure, RoundingMode.CEILING);
  }

  /** The upper end of a range. */
  public static Exact most(String number, Measure measure) {
    return new Exact(number, measure, RoundingMode.FLOOR);
  }

  /** The same as one of the quantity that a path leads to. */
  public Exact of(String path) {
    return new Exact(text, Measure.ofPath(path).orElse(null), inward);
  }

  /** As someone reads it, where a sentence has no unit for it. */
  @Override
  public String said(Reader reader) {
    return said(measure, "", reader);
  }

  /** As someone reads it in a sentence with a unit behind it. */
  String said(WrittenUnit unit, Reader reader) {
    return said(unit.measure() == null ? measure : unit.measure(), unit.words(), reader);
  }

  private String said(Measure in, String behind, Reader reader) {
    Measure shown = in == null ? null : reader.units().of(in);
    if (shown == in) {
      return text + behind;
    }
    BigDecimal exact = Quantity.exactly(in, new BigDecimal(text), shown);
    String figure = inward == null ? plain(exact.round(ALL)) : inFour(exact, inward);
    return figure + " " + shown.symbol();
  }

  /** Four digits, and all in front of the point. */
  static String inFour(BigDecimal exact, RoundingMode rounding) {
    int before = exact.precision() - exact.scale();
    return plain(exact.setScale(Math.max(0, Texts.DIGITS - before), rounding));
  }

  private static String plain(BigDecimal figure) {
    return figure.stripTrailingZeros().toPlainString();
  }

  /** The unit behind a range: none where its ends have their own. */
  record UnitOfRange(String text, Measure measure) implements ToldTo {

    @Override
    public String said(Reader reader) {
      return measure == null || reader.units().of(measure) == measure ? text : "";
    }
  }
}
