package org.footwell.fuzz;

import static org.footwell.fuzz.Refusals.requireEqual;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.StreamSupport;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Shape;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Json;
import org.footwell.web.request.JsonTokens;
import org.footwell.web.request.Trees;

/**
 * JSON as a record, read straight and by way of maps and lists: what the first takes, the second takes
 * as the same, and both read what is written of it.
 */
final class BothWays {

  private static final Engine ENGINE = new Engine();

  private BothWays() {}

  /** The record, or null where it cannot be had straight. */
  static <T extends Record> T read(Class<T> type, byte[] json) throws Exception {
    T straight = straight(type, json);
    T untyped = Refusals.orNull(() -> ENGINE.bind(type, Endpoint.untyped(json), false));
    if (straight != null) {
      requireEqual(straight, untyped, "read by way of maps and lists");
      byte[] written = Json.bytes(straight);
      requireEqual(straight, straight(type, written), "written and read again");
      requireEqual(
          straight, ENGINE.bind(type, Endpoint.untyped(written), false), "written and bound again");
    }
    return straight;
  }

  private static <T extends Record> T straight(Class<T> type, byte[] json) throws Exception {
    try {
      T record = JsonTokens.read(Shape.of(type), json);
      return record != null && isFinite(Trees.MAPPER.valueToTree(record)) ? record : null;
    } catch (JsonProcessingException | NumberFormatException refused) {
      return null;
    }
  }

  /** What no double can hold is infinite when read straight; the bounds of its field refuse it then. */
  private static boolean isFinite(JsonNode tree) {
    return tree.isDouble()
        ? Double.isFinite(tree.doubleValue())
        : StreamSupport.stream(tree.spliterator(), false).allMatch(BothWays::isFinite);
  }
}
