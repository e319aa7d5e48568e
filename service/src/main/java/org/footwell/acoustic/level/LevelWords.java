package org.footwell.acoustic.level;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Words;

/** Words in sentences about level. */
public enum LevelWords implements Words {
  PER_WATT,
  AT_2_83_V,
  HOURS,
  MINUTES,
  SECONDS;

  /** A time in the unit a person would use, to two digits: it follows from a level to a dB at best. */
  public static Phrase time(double hours) {
    if (hours >= 1) {
      return time(HOURS, hours);
    }
    return hours * 60 >= 1 ? time(MINUTES, hours * 60) : time(SECONDS, hours * 3600);
  }

  private static Phrase time(LevelWords unit, double time) {
    BigDecimal rounded = BigDecimal.valueOf(time).round(new MathContext(2, RoundingMode.HALF_UP));
    return Phrase.of(unit).with("time", rounded.doubleValue());
  }
}
