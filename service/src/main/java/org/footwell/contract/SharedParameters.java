package org.footwell.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Declares once the parameters that several operations have word for word. */
final class SharedParameters {

  /** A parameter where it stands: in a list, at an index. */
  private record Place(ArrayNode list, int index) {}

  private final ObjectNode shared;
  private final Map<JsonNode, List<Place>> places = new LinkedHashMap<>();

  private SharedParameters(ObjectNode shared) {
    this.shared = shared;
  }

  static void in(ObjectNode contract) {
    SharedParameters pass =
        new SharedParameters((ObjectNode) contract.at("/components/parameters"));
    for (JsonNode path : contract.path("paths")) {
      for (JsonNode operation : path) {
        pass.note(operation.path("parameters"));
      }
    }
    pass.places.forEach(pass::share);
  }

  private void note(JsonNode parameters) {
    for (int i = 0; i < parameters.size(); i++) {
      if (!parameters.get(i).has("$ref")) {
        places
            .computeIfAbsent(parameters.get(i), any -> new ArrayList<>())
            .add(new Place((ArrayNode) parameters, i));
      }
    }
  }

  private void share(JsonNode parameter, List<Place> alike) {
    if (alike.size() > 1) {
      String name = free(parameter.get("name").asText(), 1);
      shared.set(name, parameter);
      for (Place place : alike) {
        place.list().set(place.index(), reference(name));
      }
    }
  }

  private ObjectNode reference(String name) {
    return shared.objectNode().put("$ref", "#/components/parameters/" + name);
  }

  /** The name of a parameter, numbered where another of that name is shared already. */
  private String free(String name, int number) {
    String numbered = number == 1 ? name : name + "-" + number;
    return shared.has(numbered) ? free(name, number + 1) : numbered;
  }
}
