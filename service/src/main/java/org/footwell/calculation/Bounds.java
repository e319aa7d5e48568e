package org.footwell.calculation;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.lang.reflect.AnnotatedElement;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.footwell.calculation.Vocabulary.Quantity;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Exact;
import org.footwell.calculation.text.Form;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Phrase;

/**
 * What a value may be: read from the annotations of its field, or else from the vocabulary; the
 * contract shows the same.
 *
 * @param permit whether a value that is there is allowed
 * @param allowed the same in words that follow "must be"
 * @param least smallest number, included, or null
 * @param most largest number, included, or null
 * @param only the numbers it may be where it may be no others; else empty
 */
record Bounds(
    Predicate<Object> permit,
    Phrase allowed,
    BigDecimal least,
    BigDecimal most,
    List<BigDecimal> only) {

  private Bounds(Predicate<Object> permit, Phrase allowed) {
    this(permit, allowed, null, null, List.of());
  }

  static Bounds any(Phrase allowed) {
    return new Bounds(value -> true, allowed);
  }

  /** Lengths of a list. */
  static Bounds list(AnnotatedElement marks) {
    Size size = marks.getAnnotation(Size.class);
    return size == null
        ? any(Phrase.of(Form.LIST))
        : new Bounds(
            value -> within(((List<?>) value).size(), size),
            Phrase.of(Form.LIST_OF).with("least", size.min()).with("most", size.max()));
  }

  /** Length and form of a text. */
  static Bounds text(AnnotatedElement marks) {
    Size size = marks.getAnnotation(Size.class);
    Pattern pattern = marks.getAnnotation(Pattern.class);
    Predicate<String> form =
        pattern == null
            ? text -> true
            : java.util.regex.Pattern.compile(pattern.regexp()).asMatchPredicate();
    return new Bounds(
        value ->
            (size == null || within(((String) value).length(), size)) && form.test((String) value),
        Phrase.of(Form.TEXT)
            .with("length", length(size))
            .with(
                "pattern",
                pattern == null
                    ? Phrase.nothing()
                    : Phrase.of(Form.PATTERN).own("pattern", pattern.regexp())));
  }

  private static Phrase length(Size size) {
    return size == null
        ? Phrase.nothing()
        : Phrase.of(Form.LENGTH).with("least", size.min()).with("most", size.max());
  }

  private static boolean within(int length, Size size) {
    return length >= size.min() && length <= size.max();
  }

  /**
   * The numbers it may be, or range and decimals.
   *
   * @param name of its field, or of the list that it is an entry of
   */
  static Bounds number(
      Class<?> type, AnnotatedElement marks, Optional<Quantity> quantity, String name) {
    List<String> only = quantity.map(Quantity::only).orElse(List.of());
    boolean own = Limit.lowest(marks).or(() -> Limit.highest(marks)).isPresent();
    return only.isEmpty() || own ? range(type, marks, quantity, name) : numbers(only);
  }

  private static Bounds numbers(List<String> written) {
    List<BigDecimal> only = written.stream().map(BigDecimal::new).toList();
    return new Bounds(
        value -> only.stream().anyMatch(one -> one.compareTo(decimal(value)) == 0),
        Allowed.oneOf(written),
        Collections.min(only),
        Collections.max(only),
        only);
  }

  private static BigDecimal decimal(Object number) {
    return new BigDecimal(number.toString());
  }

  private static Bounds range(
      Class<?> type, AnnotatedElement marks, Optional<Quantity> quantity, String name) {
    boolean whole = type != Double.class && type != double.class && type != BigDecimal.class;
    Limit least =
        Limit.lowest(marks)
            .or(() -> quantity.map(Quantity::least).map(Limit::included))
            .orElse(null);
    Limit most =
        Limit.highest(marks)
            .or(() -> quantity.map(Quantity::most).map(Limit::included))
            .orElse(null);
    Digits digits = marks.getAnnotation(Digits.class);
    Predicate<Object> permit =
        type == BigDecimal.class
            ? value -> exactly((BigDecimal) value, least, most, digits)
            : value -> rounded(((Number) value).doubleValue(), least, most);
    return new Bounds(
        permit,
        Phrase.of(whole ? Form.WHOLE_NUMBER : Form.NUMBER)
            .with("range", range(least, most, Measure.ofName(name).orElse(null)))
            .with(
                "decimals",
                digits == null
                    ? Phrase.nothing()
                    : Phrase.of(Form.DECIMALS).with("most", digits.fraction())),
        least == null || !least.included() ? null : least.exact(),
        most == null || !most.included() ? null : most.exact(),
        List.of());
  }

  /** Not-a-number lies within no bound. */
  private static boolean rounded(double value, Limit least, Limit most) {
    return (least == null
            || (least.included() ? value >= least.rounded() : value > least.rounded()))
        && (most == null || (most.included() ? value <= most.rounded() : value < most.rounded()));
  }

  private static boolean exactly(BigDecimal value, Limit least, Limit most, Digits digits) {
    return (least == null || value.compareTo(least.exact()) >= (least.included() ? 0 : 1))
        && (most == null || value.compareTo(most.exact()) <= (most.included() ? 0 : -1))
        && (digits == null
            || (value.stripTrailingZeros().scale() <= digits.fraction()
                && value.precision() - value.scale() <= digits.integer()));
  }

  private static Phrase range(Limit least, Limit most, Measure measure) {
    if (least == null || most == null) {
      return Phrase.nothing();
    }
    Form form =
        least.included()
            ? (most.included() ? Form.FROM_TO : Form.FROM_TO_BELOW)
            : (most.included() ? Form.ABOVE_TO : Form.ABOVE_TO_BELOW);
    return Phrase.of(form)
        .own("least", Exact.least(least.text(), measure))
        .own("most", Exact.most(most.text(), measure));
  }

  /** One end of a range, as it is written and as it compares. */
  private record Limit(String text, BigDecimal exact, double rounded, boolean included) {

    static Limit of(String text, boolean included) {
      BigDecimal exact = new BigDecimal(text);
      return new Limit(text, exact, exact.doubleValue(), included);
    }

    static Limit included(String text) {
      return of(text, true);
    }

    static Optional<Limit> lowest(AnnotatedElement marks) {
      DecimalMin decimal = marks.getAnnotation(DecimalMin.class);
      Min whole = marks.getAnnotation(Min.class);
      return decimal != null
          ? Optional.of(of(decimal.value(), decimal.inclusive()))
          : Optional.ofNullable(whole).map(min -> included(Long.toString(min.value())));
    }

    static Optional<Limit> highest(AnnotatedElement marks) {
      DecimalMax decimal = marks.getAnnotation(DecimalMax.class);
      Max whole = marks.getAnnotation(Max.class);
      return decimal != null
          ? Optional.of(of(decimal.value(), decimal.inclusive()))
          : Optional.ofNullable(whole).map(max -> included(Long.toString(max.value())));
    }
  }
}
