package org.footwell.calculation.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Units of a span of time below a day. */
public enum Span implements Words {
  HOURS,
  MINUTES,
  SECONDS;

  private static final int MINUTES_IN_HOUR = 60;
  private static final int SECONDS_IN_HOUR = 3600;

  /** A time in the unit a person would use, to two digits. */
  public static Phrase of(double hours) {
    if (hours >= 1) {
      return phrase(HOURS, hours);
    }
    return hours * MINUTES_IN_HOUR >= 1
        ? phrase(MINUTES, hours * MINUTES_IN_HOUR)
        : phrase(SECONDS, hours * SECONDS_IN_HOUR);
  }

  private static Phrase phrase(Span unit, double time) {
    BigDecimal rounded = BigDecimal.valueOf(time).round(new MathContext(2, RoundingMode.HALF_UP));
    return Phrase.of(unit).with("time", rounded.doubleValue());
  }
}
