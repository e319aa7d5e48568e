package org.footwell.calculation.text;

/** Units of a span of time below a day. */
public enum Span implements Words {
  HOUR,
  HOURS,
  MINUTE,
  MINUTES,
  SECOND,
  SECONDS;

  private static final int MINUTES_IN_HOUR = 60;
  private static final int SECONDS_IN_HOUR = 3600;

  /** A time in the unit a person would use, to two digits. */
  public static Phrase of(double hours) {
    if (hours >= 1) {
      return phrase(HOUR, HOURS, hours);
    }
    return hours * MINUTES_IN_HOUR >= 1
        ? phrase(MINUTE, MINUTES, hours * MINUTES_IN_HOUR)
        : phrase(SECOND, SECONDS, hours * SECONDS_IN_HOUR);
  }

  private static Phrase phrase(Span one, Span several, double time) {
    double rounded = Rounding.rounded(time, 2);
    return Phrase.of(rounded == 1 ? one : several).with("time", rounded);
  }
}
