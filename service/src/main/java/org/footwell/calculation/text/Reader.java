package org.footwell.calculation.text;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * For whom an answer is put into a form for people.
 *
 * @param language one there are texts in
 * @param units in which measures are shown
 * @param wording how findings are said
 * @param names what the caller's own words are called there
 */
public record Reader(Locale language, Units units, Wording wording, UnaryOperator<String> names) {

  private static final String ENGLISH = "en";

  /** Who reads sentences. */
  public Reader(Locale language, Units units) {
    this(language, units, Wording.SENTENCES, UnaryOperator.identity());
  }

  /** How findings are said. */
  public enum Wording {
    /** Not at all: a program knows their codes. */
    CODES,
    /** In sentences, with the digits that tell numbers apart. */
    SENTENCES,
    /** In sentences beside tables, with figures rounded as they are there. */
    BESIDE_TABLES,
    /** The same on a sheet, with parts called as they are there. */
    ON_SHEETS;

    /** Those that can be asked for; a sheet is a format of its own. */
    public static final List<Wording> ASKED_FOR = List.of(CODES, SENTENCES, BESIDE_TABLES);

    boolean isBesideTables() {
      return this == BESIDE_TABLES || this == ON_SHEETS;
    }
  }

  /** More headers than browsers have; they are taken apart once. */
  private static final int MOST_HEADERS = 200;

  private static final Map<String, Reader> BY_HEADER = new ConcurrentHashMap<>();

  /** Who says nothing. */
  public static final Reader ANYONE = in(Locale.ENGLISH);

  /** Systems of units that measures can be shown in. */
  public enum Units {
    METRIC,
    /** Inches and feet; what is no length, area or volume stays metric. */
    INCH;

    /** In what figures of a measure are shown. */
    public Measure of(Measure measure) {
      if (this == METRIC) {
        return measure;
      }
      return switch (measure) {
        case MM, CM -> Measure.IN;
        case M -> Measure.FT;
        case CM2 -> Measure.IN2;
        case CM3 -> Measure.IN3;
        case L, M3 -> Measure.FT3;
        default -> measure;
      };
    }

    /** The system of a name, where it is one. */
    public static Optional<Units> named(String name) {
      return Arrays.stream(values()).filter(units -> Names.of(units).equals(name)).findFirst();
    }
  }

  /** The codes of all languages there are texts in, the one for everybody else first. */
  public static List<String> languages() {
    return Stream.concat(Stream.of(ENGLISH), Translation.all()).toList();
  }

  /** Who reads the language of a code, where there are texts in it. */
  public static Optional<Reader> in(String code) {
    return code.equals(ENGLISH) || Translation.exists(code)
        ? Optional.of(in(Locale.forLanguageTag(code)))
        : Optional.empty();
  }

  /** The same person, shown measures in these units. */
  public Reader shown(Units other) {
    return new Reader(language, other, wording, names);
  }

  private static Reader in(Locale language) {
    return new Reader(language, Units.METRIC);
  }

  /** The same who is told findings in this way. */
  public Reader told(Wording other) {
    return new Reader(language, units, other, names);
  }

  /** The same to whom parts are called so. */
  public Reader calling(UnaryOperator<String> other) {
    return new Reader(language, units, wording, other);
  }

  /** Who asks for languages in the words of an Accept-Language header (RFC 9110, 12.5.4). */
  public static Reader of(String acceptLanguage) {
    if (acceptLanguage == null) {
      return ANYONE;
    }
    Reader known = BY_HEADER.get(acceptLanguage);
    if (known != null) {
      return known;
    }
    Reader reader = preferring(acceptLanguage);
    if (BY_HEADER.size() < MOST_HEADERS) {
      BY_HEADER.put(acceptLanguage, reader);
    }
    return reader;
  }

  private static Reader preferring(String acceptLanguage) {
    try {
      List<Locale.LanguageRange> wanted = Locale.LanguageRange.parse(acceptLanguage);
      List<Locale> there =
          wanted.stream()
              .map(range -> Locale.forLanguageTag(range.getRange()).getLanguage())
              .distinct()
              .flatMap(code -> in(code).stream())
              .map(Reader::language)
              .toList();
      Locale found = Locale.lookup(wanted, there);
      return found == null ? ANYONE : in(found);
    } catch (IllegalArgumentException notAsTheStandardSays) {
      return ANYONE;
    }
  }
}
