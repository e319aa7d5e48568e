package org.footwell.web.request;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Span;
import org.footwell.calculation.text.Texts;
import org.footwell.sheet.FigureWriter;

/** A part of an answer as a person reads it: what it is called and its figure with the unit. */
final class TextCell {

  /** A list of more values is no figure to read in a line. */
  private static final int MOST_IN_CELL = 8;

  private final FigureWriter figures;

  /** Names of figures are those of the contract, and so are their numbers: in no language. */
  TextCell() {
    figures = new FigureWriter(Reader.ANYONE);
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
  static String label(String name) {
    String bare =
        measure(name)
            .map(unit -> name.substring(0, name.length() - unit.ending().length()))
            .orElse(name);
    return bare.replace('_', ' ');
  }

  /** The same with the unit behind it, as the head of a column. */
  static String head(String name) {
    return label(name)
        + measure(name)
            .filter(unit -> unit != Measure.H)
            .map(unit -> ", " + unit.symbol())
            .orElse("");
  }

  /** Of a quantity called like its unit, such as {@code l}, nothing would be left. */
  private static Optional<Measure> measure(String name) {
    return Measure.ofName(name).filter(unit -> name.length() > unit.ending().length());
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
          ? value.size() + " values"
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
      return value.booleanValue() ? "yes" : "no";
    }
    return value.isDouble() ? rounded(name, value.doubleValue(), withUnit) : Rendering.cell(value);
  }

  private String rounded(String name, double value, boolean withUnit) {
    Measure unit = measure(name).orElse(null);
    if (unit == null) {
      return Texts.forPeople(value);
    }
    if (unit == Measure.H) {
      return Span.of(value).toString();
    }
    if (!withUnit) {
      return figures.bare(unit, value);
    }
    return (unit == Measure.G ? figures.mass(value) : figures.of(unit, value)).text();
  }

  private static String joined(String between, JsonNode list, Function<JsonNode, String> of) {
    List<String> all = new ArrayList<>();
    list.forEach(one -> all.add(of.apply(one)));
    return String.join(between, all);
  }
}
