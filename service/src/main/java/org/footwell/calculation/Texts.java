package org.footwell.calculation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import org.apache.commons.text.StringSubstitutor;

/**
 * The sentences behind the codes. Each package that declares codes has a {@code texts.properties}
 * with one line per code; {@code {name}} is replaced by the argument of that name.
 */
public final class Texts {

  private static final MathContext FOR_PEOPLE = new MathContext(4, RoundingMode.HALF_UP);

  private Texts() {}

  /** The sentence of a code, its arguments filled in and rounded for people. */
  public static String of(Coded coded, Map<String, Object> arguments) {
    String template = bundle(coded).getString(coded.code());
    if (arguments.isEmpty()) {
      return template;
    }
    StringSubstitutor substitutor =
        new StringSubstitutor(name -> forPeople(arguments.get(name)), "{", "}", '\\');
    // An argument may be the caller's own words: braces in it are only braces.
    substitutor.setDisableSubstitutionInValues(true);
    return substitutor.replace(template);
  }

  /** The sentence of a code before its arguments are filled in. */
  public static String of(Coded coded) {
    return of(coded, Map.of());
  }

  private static ResourceBundle bundle(Coded coded) {
    Class<?> home = ((Enum<?>) coded).getDeclaringClass();
    return ResourceBundle.getBundle(
        home.getPackageName() + ".texts", Locale.ROOT, home.getClassLoader());
  }

  /** Four significant digits, never an exponent, a point for the decimals; null stays null. */
  public static String forPeople(Object argument) {
    if (argument instanceof Double d && Double.isFinite(d)) {
      BigDecimal rounded = BigDecimal.valueOf(d).round(FOR_PEOPLE).stripTrailingZeros();
      return (rounded.signum() == 0 ? BigDecimal.ZERO : rounded).toPlainString();
    }
    return argument == null ? null : argument.toString();
  }
}
