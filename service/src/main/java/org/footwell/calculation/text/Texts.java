package org.footwell.calculation.text;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;

/**
 * The sentences behind the codes. Each package that declares codes has a {@code texts.properties}
 * with a line for each: {@code {name}} is replaced by the argument of that name, a number, or what
 * {@code {name:own}}, {@code {name:field}} and {@code {name:words}} say. Each other language is a
 * {@link Translation}.
 */
public final class Texts {

  /** So many significant digits are enough for people. */
  static final int DIGITS = 4;

  /** Numbers farther apart than this share of the larger one differ in their first four digits. */
  private static final double UNIT_OF_FOUR = 1.001e-3;

  /** More digits than this are what calculating leaves of equal numbers. */
  private static final int MOST_DIGITS = 9;

  /** Smaller numbers are what calculating leaves of nothing. */
  private static final double NOTHING = 1e-9;

  /** Outside of these, zeros would have to be counted. */
  private static final double LEAST_PLAIN = 1e-5;

  private static final double MOST_PLAIN = 1e7;

  private static final String LINES_AND_TABS = "\n\r\t\u0085";

  /** Stands for a character that cannot be shown. */
  private static final char REPLACEMENT = '\uFFFD';

  /** What to do stands beside the sentence, under the same key with this at its end. */
  private static final String ADVICE = ".advice";

  private static final char HYPHEN = '-';

  /** Sentences taken apart, each at its first use. */
  private static final Map<Locale, Map<Coded, Sentence>> SENTENCES = new ConcurrentHashMap<>();

  private Texts() {}

  /** Words that have no arguments. */
  public static String of(Coded coded, Locale language) {
    return sentence(coded, language).text().toString();
  }

  /** The text under a key of a package in a language, or the English one where it has none. */
  public static String translated(String home, String key, String english, Locale language) {
    return language.equals(Reader.ANYONE.language())
        ? english
        : Translation.into(language).text(home, key, english);
  }

  /** What a language has under keys of a package that begin alike, without that beginning. */
  public static Map<String, String> translations(String home, String beginning, Locale language) {
    return language.equals(Reader.ANYONE.language())
        ? Map.of()
        : Translation.into(language).beginning(home, beginning);
  }

  /** The sentence of a code before its arguments are filled in. */
  public static String of(Coded coded) {
    return of(coded, Reader.ANYONE.language());
  }

  /** What to do, before arguments are filled in; empty where nothing is to be done. */
  public static Optional<String> advice(Coded coded) {
    return advice(coded, Reader.ANYONE.language());
  }

  /** The same in a language. */
  public static Optional<String> advice(Coded coded, Locale language) {
    return Optional.ofNullable(sentence(coded, language).advice()).map(Template::toString);
  }

  /**
   * The arguments of a sentence and its advice by their names, in order, each with its kind: {@code
   * number}, {@code own} words of the caller, a {@code field}, or {@code words} of ours.
   */
  public static Map<String, String> arguments(Coded coded) {
    Map<String, String> kinds = new LinkedHashMap<>();
    for (Template.Slot slot : sentence(coded, Reader.ANYONE.language()).slots()) {
      kinds.put(slot.name(), Template.kindOf(slot));
    }
    return kinds;
  }

  /** What is said under a code in a language, or in English where there is no such text. */
  static Sentence sentence(Coded coded, Locale language) {
    Map<Coded, Sentence> known =
        SENTENCES.computeIfAbsent(language, any -> new ConcurrentHashMap<>());
    Sentence sentence = known.get(coded);
    return sentence != null ? sentence : known.computeIfAbsent(coded, one -> read(one, language));
  }

  private static Sentence read(Coded coded, Locale language) {
    Class<?> type = ((Enum<?>) coded).getDeclaringClass();
    String home = type.getPackageName();
    ResourceBundle english =
        ResourceBundle.getBundle(home + ".texts", Locale.ROOT, type.getClassLoader());
    UnaryOperator<String> text =
        key -> Translation.into(language).text(home, key, english.getString(key));
    String key = coded.key();
    return new Sentence(
        new Template(text.apply(key)),
        english.containsKey(key + ADVICE) ? new Template(text.apply(key + ADVICE)) : null);
  }

  /** Four, or what tells a value from the limit it is held against: 79.999 is not at 80. */
  static int digits(double value, double limit) {
    double larger = Math.max(Math.abs(value), Math.abs(limit));
    if (larger >= NOTHING && Math.abs(value - limit) > larger * UNIT_OF_FOUR) {
      return DIGITS;
    }
    for (int digits = DIGITS; digits <= MOST_DIGITS; digits++) {
      if (!forPeople(value, digits).equals(forPeople(limit, digits))) {
        return digits;
      }
    }
    return DIGITS;
  }

  /**
   * Four significant digits and a point for the decimals, with an exponent where there would be
   * many zeros, such as 9.873e9; what is next to nothing is 0; null stays null.
   */
  public static String forPeople(Object argument) {
    return forPeople(argument, DIGITS);
  }

  static String forPeople(Object argument, int digits) {
    if (argument instanceof Double d && Double.isFinite(d)) {
      return Math.abs(d) < NOTHING ? "0" : rounded(d, digits);
    }
    return argument == null ? null : argument.toString();
  }

  /** The same in a language. */
  public static String forPeople(Number number, Locale language) {
    return forPeople(number, DIGITS, language);
  }

  /** The same within a sentence: with the marks of its language; exact decimals are sums of money. */
  static String forPeople(Object argument, int digits, Locale language) {
    if (argument instanceof BigDecimal sum) {
      return WrittenMoney.of(sum, language);
    }
    String figure = forPeople(argument, digits);
    return argument instanceof Number ? inWords(figure, language) : figure;
  }

  /** A figure within a sentence: with the decimal mark of its language and a minus sign. */
  static String inWords(String figure, Locale language) {
    return figure.replace(HYPHEN, Marks.MINUS).replace(".", of(CoreWords.DECIMAL_MARK, language));
  }

  /** A caller's own words in one line: a space for each line end and tab, and shown. */
  public static String oneLine(String words) {
    return words.chars().anyMatch(Texts::needsALook)
        ? shown(words.replaceAll("\\R|\t", " "))
        : words;
  }

  /** A caller's own words with a sign for each character that no page and no XML can hold. */
  public static String shown(String words) {
    if (words.chars().noneMatch(Texts::needsALook)) {
      return words;
    }
    StringBuilder shown = new StringBuilder(words.length());
    words.codePoints().forEach(c -> shown.appendCodePoint(canBeShown(c) ? c : REPLACEMENT));
    return shown.toString();
  }

  private static boolean needsALook(int character) {
    return character < ' ' || character > '~';
  }

  private static boolean canBeShown(int character) {
    int type = Character.getType(character);
    return (type != Character.CONTROL || LINES_AND_TABS.indexOf(character) >= 0)
        && type != Character.SURROGATE
        && (character & 0xFFFE) != 0xFFFE;
  }

  private static String rounded(double d, int digits) {
    BigDecimal rounded = Rounding.of(d, digits);
    double size = Math.abs(d);
    if (size >= LEAST_PLAIN && size < MOST_PLAIN) {
      return rounded.stripTrailingZeros().toPlainString();
    }
    int exponent = rounded.precision() - rounded.scale() - 1;
    return rounded.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
  }
}
