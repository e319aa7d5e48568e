package org.footwell.calculation.text;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;

/** What is allowed, in words that follow "must be"; numbers are not rounded. */
public enum Allowed implements Words {
  AT_LEAST,
  AT_MOST,
  ABOVE,
  BELOW,
  BETWEEN,
  RANGE,
  ABOVE_AND_BELOW,
  ONLY,
  ONE_OF,
  EITHER,
  WIDER_RANGE,
  FIELDS,
  LEFT_OUT,
  LEFT_OUT_WHERE,
  GIVEN_WITH,
  GIVEN_WHERE;

  /** Everything from this number up; the unit may be empty. */
  public static Phrase atLeast(double least, String unit) {
    return in(unit, AT_LEAST).own("least", least(least, unit));
  }

  public static Phrase atMost(double most, String unit) {
    return in(unit, AT_MOST).own("most", most(most, unit));
  }

  public static Phrase above(double limit, String unit) {
    return in(unit, ABOVE).own("limit", least(limit, unit));
  }

  public static Phrase below(double limit, String unit) {
    return in(unit, BELOW).own("limit", most(limit, unit));
  }

  /** What comes after another value of a quantity, or is the same, where that may be. */
  public static Phrase after(double before, boolean orEqual, String quantity) {
    return Phrase.of(orEqual ? AT_LEAST : ABOVE)
        .own(
            orEqual ? "least" : "limit",
            Exact.least(exact(before), Measure.ofPath(quantity).orElse(null)))
        .own("unit", "");
  }

  /** Both ends included. */
  public static Phrase between(double least, double most, String unit) {
    return in(unit, BETWEEN).own("least", least(least, unit)).own("most", most(most, unit));
  }

  /** The same where it does not follow "must be". */
  public static Phrase range(double least, double most, String unit) {
    return in(unit, RANGE).own("least", least(least, unit)).own("most", most(most, unit));
  }

  /** Both ends left out. */
  public static Phrase aboveAndBelow(double low, double high, String unit) {
    return in(unit, ABOVE_AND_BELOW).own("low", least(low, unit)).own("high", most(high, unit));
  }

  private static Phrase in(String unit, Allowed words) {
    return Phrase.of(words).own("unit", new Exact.UnitOfRange(unit, measure(unit)));
  }

  private static Exact least(double number, String unit) {
    return Exact.least(exact(number), measure(unit));
  }

  private static Exact most(double number, String unit) {
    return Exact.most(exact(number), measure(unit));
  }

  private static Measure measure(String unit) {
    return unit.isEmpty() ? null : WrittenUnit.at(" " + unit, 0).measure();
  }

  /** Nothing but this. */
  public static Phrase only(Object value) {
    return Phrase.of(ONLY).own("value", exact(value));
  }

  /** Nothing but this, as someone reads it. */
  public static Phrase only(ToldTo value) {
    return Phrase.of(ONLY).own("value", value);
  }

  /** A range that is wider at one end or both. */
  public static Phrase widerRange() {
    return Phrase.of(WIDER_RANGE);
  }

  /** One of these names or numbers. */
  public static Phrase oneOf(Collection<?> all) {
    return Phrase.of(ONE_OF).own("all", all.stream().map(Allowed::exact).toList());
  }

  public static Phrase oneOf(Object... all) {
    return oneOf(List.of(all));
  }

  /** One of two names or numbers. */
  public static Phrase either(Object one, Object other) {
    return Phrase.of(EITHER).own("one", exact(one)).own("other", exact(other));
  }

  /** These fields, or one of them, as the sentence says. */
  public static Phrase fields(Collection<String> fields) {
    return Phrase.of(FIELDS).fields("fields", List.copyOf(fields));
  }

  /** Nothing, where these fields are given. */
  public static Phrase leftOutBeside(String... fields) {
    return Phrase.of(LEFT_OUT).fields("fields", List.of(fields));
  }

  /** Nothing at all. */
  public static Phrase absent() {
    return Phrase.of(Form.ABSENT);
  }

  /** Nothing, where a field has this value. */
  public static Phrase leftOutWhere(String field, Enum<?> value) {
    return Phrase.of(LEFT_OUT_WHERE).field("field", field).own("value", Names.of(value));
  }

  public static Phrase givenWith(String... fields) {
    return Phrase.of(GIVEN_WITH).fields("fields", List.of(fields));
  }

  /** Something, where a field has this value. */
  public static Phrase givenWhere(String field, Enum<?> value) {
    return Phrase.of(GIVEN_WHERE).field("field", field).own("value", Names.of(value));
  }

  private static String exact(Object value) {
    if (value instanceof Enum<?> constant) {
      return Names.of(constant);
    }
    return value instanceof Double number && Double.isFinite(number)
        ? BigDecimal.valueOf(number).stripTrailingZeros().toPlainString()
        : String.valueOf(value);
  }
}
