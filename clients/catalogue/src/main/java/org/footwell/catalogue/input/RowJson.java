package org.footwell.catalogue.input;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.Map;
import java.util.TreeMap;
import org.footwell.catalogue.row.Row;

/** Puts cells into the JSON of a request, each in the type its field has in the contract. */
final class RowJson {

  /** Characters of the longest part number that the service takes. */
  private static final int LONGEST_PART = 80;

  private final ObjectMapper mapper;
  private final Fields fields;

  RowJson(ObjectMapper mapper, Fields fields) {
    this.mapper = mapper;
    this.fields = fields;
  }

  ObjectNode empty() {
    return JsonNodeFactory.instance.objectNode();
  }

  /** Sets a field, whatever it was before; {@code sensitivity.basis} goes into a group. */
  void put(ObjectNode request, String field, String cell, Decimal decimal) {
    int dot = field.indexOf('.');
    ObjectNode group = request;
    if (dot > 0) {
      JsonNode there = request.get(field.substring(0, dot));
      group =
          there instanceof ObjectNode object ? object : request.putObject(field.substring(0, dot));
    }
    group.set(field.substring(dot + 1), value(field, cell, decimal));
  }

  /**
   * The row of a request. On its way it is called by its line, so that each answer tells whose it is;
   * a part number that the service would not take stays, to be refused.
   */
  Row row(long line, String part, ObjectNode request) throws JsonProcessingException {
    JsonNode given = request.remove(Mapping.PART_FIELD);
    String figures = figures(request);
    boolean taken =
        given == null
            || (given.isTextual()
                && !given.textValue().isEmpty()
                && given.textValue().length() <= LONGEST_PART);
    request.set(Mapping.PART_FIELD, taken ? TextNode.valueOf(Long.toString(line)) : given);
    return Row.of(line, part, mapper.writeValueAsString(request), figures);
  }

  /** Equal for equal figures, in whatever order and with however many zeros they are written. */
  private static String figures(JsonNode node) {
    if (node.isNumber()) {
      return node.decimalValue().stripTrailingZeros().toString();
    }
    if (!node.isObject()) {
      return node.toString();
    }
    Map<String, String> sorted = new TreeMap<>();
    node.properties().forEach(field -> sorted.put(field.getKey(), figures(field.getValue())));
    return sorted.toString();
  }

  /** What is not of the field's kind is sent as text: the service then says what it must be. */
  private JsonNode value(String field, String cell, Decimal decimal) {
    if (fields.takesText(field)) {
      return TextNode.valueOf(cell);
    }
    BigDecimal number = decimal.read(cell);
    if (number != null) {
      return DecimalNode.valueOf(number);
    }
    return cell.equals("true") || cell.equals("false")
        ? BooleanNode.valueOf(cell.equals("true"))
        : TextNode.valueOf(cell);
  }
}
