package org.footwell.generator;

import com.fasterxml.jackson.databind.JsonNode;
import io.swagger.v3.core.util.Json;
import io.swagger.v3.oas.models.OpenAPI;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Which schemas are parts of others: called after an owner, of which the name is the beginning, and
 * used by nothing but it and its parts.
 */
final class Parts {

  private final Map<String, Set<String>> users = new TreeMap<>();
  private final Map<String, String> owners = new TreeMap<>();

  Parts(OpenAPI contract) {
    JsonNode document = Json.mapper().valueToTree(contract);
    JsonNode schemas = document.at("/components/schemas");
    schemas.fieldNames().forEachRemaining(name -> users.put(name, new HashSet<>()));
    schemas.properties().forEach(one -> noteUses(one.getValue(), one.getKey()));
    // Where paths and responses use a schema, it is nobody's part.
    noteUses(document.path("paths"), "");
    document.path("components").properties().stream()
        .filter(kind -> !kind.getKey().equals("schemas"))
        .forEach(kind -> noteUses(kind.getValue(), ""));
    users.keySet().forEach(this::noteOwner);
    while (owners.keySet().removeIf(part -> !isPart(part))) {
      // What was no part may have been the way by which another one seemed to be.
    }
  }

  /** The owner of every part, which may be a part itself. */
  Map<String, String> owners() {
    return owners;
  }

  static String shortName(String part, String owner) {
    return part.substring(owner.length());
  }

  private void noteUses(JsonNode place, String user) {
    for (JsonNode reference : place.findValues("$ref")) {
      String address = reference.asText();
      Set<String> known = users.get(address.substring(address.lastIndexOf('/') + 1));
      if (known != null) {
        known.add(user);
      }
    }
  }

  /** The longest name that the schema's own begins with, a word being whole. */
  private void noteOwner(String name) {
    for (int end = name.length() - 1; end > 0; end--) {
      String owner = name.substring(0, end);
      if (Character.isUpperCase(name.charAt(end)) && users.containsKey(owner)) {
        owners.put(name, owner);
        return;
      }
    }
  }

  /** Also not where its short name would hide a type that is meant within the outermost owner. */
  private boolean isPart(String name) {
    String outermost = outermost(name);
    String shortName = shortName(name, owners.get(name));
    return users.get(name).stream().allMatch(user -> outermost(user).equals(outermost))
        && users.getOrDefault(shortName, Set.of()).stream()
            .noneMatch(user -> outermost(user).equals(outermost));
  }

  private String outermost(String name) {
    String owner = owners.get(name);
    return owner == null ? name : outermost(owner);
  }
}
