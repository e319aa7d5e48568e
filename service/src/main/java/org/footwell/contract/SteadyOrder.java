package org.footwell.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * Puts the default of a choice behind its constants. The mapper writes these two in the order in which Java
 * lists their methods, which differs from one run of the build to the next; all else has an order.
 */
final class SteadyOrder {

  private static final String STANDARD = "default";

  private SteadyOrder() {}

  static ObjectNode of(ObjectNode contract) {
    walk(contract);
    return contract;
  }

  private static void walk(JsonNode node) {
    if (node instanceof ObjectNode object && object.has("enum") && object.has(STANDARD)) {
      JsonNode standard = object.remove(STANDARD);
      object.set(STANDARD, standard);
    }
    node.forEach(SteadyOrder::walk);
  }
}
