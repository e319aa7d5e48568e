package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Refused;
import org.footwell.web.request.Trees;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever of a request is missing or senseless, no check of it stumbles: it is refused with what is known. */
@Tag("long")
class ChecksStandAnythingTest {

  private static final JsonNodeFactory MADE = JsonNodeFactory.instance;

  /** Nothing, and what few fields can be. */
  private static final List<JsonNode> SENSELESS =
      List.of(MADE.nullNode(), MADE.numberNode(-1e9), MADE.textNode(""), MADE.arrayNode());

  static Stream<Calculation<?, ?>> calculations() {
    return Calculations.all().stream().map(calculation -> calculation);
  }

  @ParameterizedTest
  @MethodSource("calculations")
  void everyFieldMayBeAnything(Calculation<?, ?> calculation) {
    ObjectNode example = (ObjectNode) Example.read(calculation.card().example());
    List<String> places = new ArrayList<>();
    collect(example, "", places);
    for (String place : places) {
      for (JsonNode senseless : SENSELESS) {
        ObjectNode request = example.deepCopy();
        put(request, place, senseless);
        request.put("colour", "red");
        Object untyped = Trees.MAPPER.convertValue(request, Object.class);
        assertThrows(
            Refused.class,
            () -> new Engine().bind(calculation, untyped, false),
            () -> place + " " + senseless);
      }
    }
  }

  private static void collect(JsonNode here, String at, List<String> places) {
    if (here instanceof ObjectNode group) {
      group.properties().forEach(field -> add(field.getValue(), at + "/" + field.getKey(), places));
    } else if (here instanceof ArrayNode list) {
      // One entry stands for those like it.
      for (int i = 0; i < Math.min(2, list.size()); i++) {
        add(list.get(i), at + "/" + i, places);
      }
    }
  }

  private static void add(JsonNode value, String at, List<String> places) {
    places.add(at);
    collect(value, at, places);
  }

  private static void put(ObjectNode request, String place, JsonNode value) {
    int last = place.lastIndexOf('/');
    JsonNode holder = request.at(place.substring(0, last));
    if (holder instanceof ObjectNode group) {
      group.set(place.substring(last + 1), value);
    } else {
      ((ArrayNode) holder).set(Integer.parseInt(place.substring(last + 1)), value);
    }
  }
}
