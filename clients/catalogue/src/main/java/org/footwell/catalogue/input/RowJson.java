package org.footwell.catalogue.input;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Puts cells into the JSON of a request, each in the type its field has in the contract. */
final class RowJson {

  /** A number as catalogues print it, as the CSV of the service takes it too: .41, 5. and 04 as well. */
  private static final Pattern NUMBER =
      Pattern.compile("-?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][+-]?[0-9]{1,4})?");

  private static final int LONGEST_NUMBER = 40;

  private final Fields fields;

  RowJson(Fields fields) {
    this.fields = fields;
  }

  ObjectNode empty() {
    return JsonNodeFactory.instance.objectNode();
  }

  /** Sets a field, whatever it was before; {@code sensitivity.basis} goes into a group. */
  void put(ObjectNode request, String field, String cell) {
    int dot = field.indexOf('.');
    ObjectNode group = request;
    if (dot > 0) {
      JsonNode there = request.get(field.substring(0, dot));
      group =
          there instanceof ObjectNode object ? object : request.putObject(field.substring(0, dot));
    }
    group.set(field.substring(dot + 1), value(field, cell));
  }

  /** What is not of the field's kind is sent as text: the service then says what it must be. */
  private JsonNode value(String field, String cell) {
    if (fields.takesText(field)) {
      return TextNode.valueOf(cell);
    }
    if (cell.length() <= LONGEST_NUMBER && NUMBER.matcher(cell).matches()) {
      return DecimalNode.valueOf(new BigDecimal(cell));
    }
    return cell.equals("true") || cell.equals("false")
        ? BooleanNode.valueOf(cell.equals("true"))
        : TextNode.valueOf(cell);
  }
}
