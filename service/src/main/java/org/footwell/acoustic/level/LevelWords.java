package org.footwell.acoustic.level;

import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Words;

/** Words in sentences about level. */
public enum LevelWords implements Words {
  PER_WATT,
  AT_2_83_V,
  HOURS,
  MINUTES,
  SECONDS;

  /** A time below a day in the unit a person would use. */
  public static Phrase time(double hours) {
    if (hours >= 1) {
      return Phrase.of(HOURS).with("time", hours);
    }
    return hours * 60 >= 1
        ? Phrase.of(MINUTES).with("time", hours * 60)
        : Phrase.of(SECONDS).with("time", hours * 3600);
  }
}
