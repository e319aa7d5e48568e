package org.footwell.calculation.text;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * For whom an answer is put into a form for people.
 *
 * @param language one of {@link #LANGUAGES}
 * @param units in which measures are shown
 */
public record Reader(Locale language, Units units) {

  /** What texts there are in, the one for everybody else first. */
  public static final List<Locale> LANGUAGES =
      Stream.concat(Stream.of(Locale.ENGLISH), Translation.all()).toList();

  /** Who says nothing. */
  public static final Reader ANYONE = in(LANGUAGES.get(0));

  /** Systems of units that measures can be shown in. */
  public enum Units {
    METRIC
  }

  /** Who reads a language that there are texts in. */
  public static Reader in(Locale language) {
    return new Reader(language, Units.METRIC);
  }

  /** Who asks for languages in the words of an Accept-Language header (RFC 9110, 12.5.4). */
  public static Reader of(String acceptLanguage) {
    return of(acceptLanguage, LANGUAGES);
  }

  /** The same where there are texts in these languages, the one for everybody else first. */
  public static Reader of(String acceptLanguage, List<Locale> languages) {
    if (acceptLanguage == null || languages.size() == 1) {
      return ANYONE;
    }
    try {
      Locale found = Locale.lookup(Locale.LanguageRange.parse(acceptLanguage), languages);
      return found == null ? ANYONE : in(found);
    } catch (IllegalArgumentException notAsTheStandardSays) {
      return ANYONE;
    }
  }
}
