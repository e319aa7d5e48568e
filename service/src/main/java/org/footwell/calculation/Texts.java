package org.footwell.calculation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The sentences behind the codes. Each package that declares codes has a {@code texts.properties}
 * with one line per code; {@code {name}} is replaced by the argument of that name.
 */
public final class Texts {

  private static final int DIGITS = 4;

  /** More digits than this are what calculating leaves of equal numbers. */
  private static final int MOST_DIGITS = 9;

  /** The two numbers of a sentence that are held against each other. */
  private static final Set<String> HELD = Set.of("value", "limit");

  /** A placeholder, and the unit after it if that is one of differences. */
  private static final Pattern PLACEHOLDER =
      Pattern.compile("\\{(\\w+)\\}(?= (dB|percent|degrees)\\b)?");

  /** Smaller numbers are what calculating leaves of nothing... */
  private static final double NOTHING = 1e-9;

  /** ...and so are smaller decibels, percent and degrees. */
  private static final double NO_DIFFERENCE = 1e-6;

  /** Outside of these, zeros would have to be counted. */
  private static final double LEAST_PLAIN = 1e-5;

  private static final double MOST_PLAIN = 1e7;

  private Texts() {}

  /** The sentence of a code, its arguments filled in and rounded for people. */
  public static String of(Coded coded, Map<String, Object> arguments) {
    return filled(of(coded), arguments);
  }

  /** An argument may be the caller's own words: braces in it are only braces. */
  static String filled(String template, Map<String, Object> arguments) {
    StringBuilder sentence = new StringBuilder(template.length() + 40);
    int digits = digits(template, arguments);
    Matcher placeholder = PLACEHOLDER.matcher(template);
    while (placeholder.find()) {
      Object argument = arguments.get(placeholder.group(1));
      assert argument != null : placeholder.group() + " is not filled in: " + template;
      boolean nothing =
          placeholder.group(2) != null
              && argument instanceof Double difference
              && Math.abs(difference) < NO_DIFFERENCE;
      boolean held = HELD.contains(placeholder.group(1));
      String words =
          argument == null
              ? placeholder.group()
              : nothing ? "0" : forPeople(argument, held ? digits : DIGITS);
      placeholder.appendReplacement(sentence, Matcher.quoteReplacement(words));
    }
    return placeholder.appendTail(sentence).toString();
  }

  /** Four, or what tells a value from the limit it is held against: 79.999 is not at 80. */
  private static int digits(String template, Map<String, Object> arguments) {
    if (HELD.stream().anyMatch(name -> !template.contains("{" + name + "}"))
        || !(arguments.get("value") instanceof Double value)
        || !(arguments.get("limit") instanceof Double limit)) {
      return DIGITS;
    }
    for (int digits = DIGITS; digits <= MOST_DIGITS; digits++) {
      if (!forPeople(value, digits).equals(forPeople(limit, digits))) {
        return digits;
      }
    }
    return DIGITS;
  }

  /** The sentence of a code before its arguments are filled in. */
  public static String of(Coded coded) {
    return bundle(coded).getString(coded.code());
  }

  private static ResourceBundle bundle(Coded coded) {
    Class<?> home = ((Enum<?>) coded).getDeclaringClass();
    return ResourceBundle.getBundle(
        home.getPackageName() + ".texts", Locale.ROOT, home.getClassLoader());
  }

  /**
   * Four significant digits and a point for the decimals, with an exponent where there would be
   * many zeros, such as 9.873e9; what is next to nothing is 0; null stays null.
   */
  public static String forPeople(Object argument) {
    return forPeople(argument, DIGITS);
  }

  private static String forPeople(Object argument, int digits) {
    if (argument instanceof Double d && Double.isFinite(d)) {
      return Math.abs(d) < NOTHING ? "0" : rounded(d, digits);
    }
    return argument == null ? null : argument.toString();
  }

  private static String rounded(double d, int digits) {
    BigDecimal rounded = BigDecimal.valueOf(d).round(new MathContext(digits, RoundingMode.HALF_UP));
    double size = Math.abs(d);
    if (size >= LEAST_PLAIN && size < MOST_PLAIN) {
      return rounded.stripTrailingZeros().toPlainString();
    }
    int exponent = rounded.precision() - rounded.scale() - 1;
    return rounded.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
  }
}
