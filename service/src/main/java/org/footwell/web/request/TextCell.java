package org.footwell.web.request;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Span;
import org.footwell.calculation.text.Texts;
import org.footwell.calculation.text.Words;
import org.footwell.sheet.FigureWriter;

/** A part of an answer as a person reads it: what it is called and its figure with the unit. */
final class TextCell {

  /** A list of more values is no figure to read in a line. */
  private static final int MOST_IN_CELL = 8;

  /** Stands between a figure and its unit until lines are broken. */
  static final char NO_BREAK = '\u00a0';

  private final Reader reader;
  private final Labels labels;
  private final Currency currency;
  private final FigureWriter figures;

  /**
   * Of an answer.
   *
   * @param currency of its sums of money, or null
   */
  TextCell(Reader reader, Labels labels, Currency currency) {
    this.reader = reader;
    this.labels = labels;
    this.currency = currency;
    figures = new FigureWriter(reader);
  }

  /** Whether it is one value, or a list of such. */
  static boolean isFigure(JsonNode value) {
    return value.isValueNode()
        || (value.isArray() && (value.isEmpty() || value.get(0).isValueNode()));
  }

  /** Whether it is a list of groups that no line can hold. */
  static boolean isLong(JsonNode value) {
    return value.isArray() && !isFigure(value) && value.size() > MOST_IN_CELL / 2;
  }

  /** The name of a quantity without its unit. */
  String label(String name) {
    return labels.of(name);
  }

  /** The same with the unit behind it, as the head of a column. */
  String head(String name) {
    return label(name)
        + Labels.measure(name)
            .filter(unit -> unit != Measure.H)
            .map(unit -> ", " + symbol(unit))
            .orElse("");
  }

  private String symbol(Measure unit) {
    return unit == Measure.OCTAVES ? say(TextWords.OCTAVES) : figures.unit(unit);
  }

  private String say(Words words) {
    return Texts.of(words, reader.language());
  }

  /** A value with its unit. */
  String figure(String name, JsonNode value) {
    return said(name, value, true);
  }

  /** A value whose unit stands elsewhere. */
  String bare(String name, JsonNode value) {
    return said(name, value, false);
  }

  /** A number of which no more is known. */
  String number(JsonNode value) {
    return said("", value, false);
  }

  private String said(String name, JsonNode value, boolean withUnit) {
    if (value.isArray()) {
      return value.size() > MOST_IN_CELL && isFigure(value)
          ? Phrase.of(TextWords.VALUES).with("count", value.size()).said(reader)
          : joined("; ", value, one -> said(name, one, withUnit));
    }
    if (value.isObject()) {
      List<String> parts = new ArrayList<>();
      for (Map.Entry<String, JsonNode> part : value.properties()) {
        parts.add(said(part.getKey(), part.getValue(), true));
      }
      return String.join(" ", parts);
    }
    if (value.isBoolean()) {
      return say(value.booleanValue() ? TextWords.YES : TextWords.NO);
    }
    if (value.isDouble()) {
      return rounded(name, value.doubleValue(), withUnit);
    }
    if (value.isBigDecimal()) {
      return figures.money(value.decimalValue(), currency, withUnit).text();
    }
    return value.isNumber()
        ? Texts.forPeople(value.numberValue(), reader.language())
        : Rendering.cell(value);
  }

  private String rounded(String name, double value, boolean withUnit) {
    Measure unit = Labels.measure(name).orElse(null);
    if (unit == null) {
      return Texts.forPeople(value, reader.language());
    }
    if (unit == Measure.H) {
      return Span.of(value).said(reader);
    }
    if (!withUnit) {
      return figures.bare(unit, value);
    }
    if (unit == Measure.OCTAVES) {
      return figures.bare(unit, value) + NO_BREAK + symbol(unit);
    }
    return switch (unit) {
      case G -> figures.mass(value).text();
      case MM2 -> figures.wire(value).text();
      default -> figures.of(unit, value).text();
    };
  }

  private static String joined(String between, JsonNode list, Function<JsonNode, String> of) {
    List<String> all = new ArrayList<>();
    list.forEach(one -> all.add(of.apply(one)));
    return String.join(between, all);
  }
}
