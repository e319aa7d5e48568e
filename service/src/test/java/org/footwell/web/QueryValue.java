package org.footwell.web;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.node.BigIntegerNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.footwell.calculation.text.Quantity;

/** The text of a query as the value it stands for. */
final class QueryValue {

  private static final ObjectReader JSON =
      new ObjectMapper().reader().with(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  /** A number as people write it, which JSON would not have. */
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");

  private QueryValue() {}

  /**
   * A value as the contract has it.
   *
   * @param type that it has there
   * @param name of its field
   * @param others values of the same query, which may name the quantity that it is one of
   */
  static JsonNode typed(String type, String name, String value, List<String> others) {
    try {
      return type.equals("string") ? TextNode.valueOf(value) : JSON.readTree(value);
    } catch (IOException notOfTheType) {
      return NUMBER.matcher(value).matches()
          ? number(new BigDecimal(value))
          : quantity(name, value, others);
    }
  }

  private static JsonNode number(BigDecimal value) {
    return value.scale() == 0
        ? BigIntegerNode.valueOf(value.toBigInteger())
        : DecimalNode.valueOf(value);
  }

  /** A length, an area or a volume with its unit, which the contract allows for all of them at once. */
  private static JsonNode quantity(String name, String value, List<String> others) {
    return Stream.concat(Stream.of(name), others.stream())
        .map(path -> Quantity.read(path, value))
        .filter(Objects::nonNull)
        .findFirst()
        .map(number -> (JsonNode) DoubleNode.valueOf(number))
        .orElse(TextNode.valueOf(value));
  }
}
