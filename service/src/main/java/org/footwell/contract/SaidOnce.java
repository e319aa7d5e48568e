package org.footwell.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Takes out of a finished contract what it says twice: the sentence of a list at its entries, of a
 * parameter at its schema, of a record at each place that refers to it, and bounds that are not
 * exclusive.
 */
final class SaidOnce {

  private static final String REFERENCE = "#/components/schemas/";
  private static final String TEXT = "description";

  private final JsonNode schemas;

  /** By the name of a shared schema, the places that refer to it with a sentence of their own. */
  private final Map<String, List<ObjectNode>> described = new HashMap<>();

  /** By the name of a shared schema, the sentences of the lists whose entries it is. */
  private final Map<String, Set<JsonNode>> listed = new HashMap<>();

  private SaidOnce(ObjectNode contract) {
    this.schemas = contract.at("/components/schemas");
  }

  static ObjectNode of(ObjectNode contract) {
    SaidOnce pass = new SaidOnce(contract);
    pass.walk(contract);
    pass.schemas
        .properties()
        .forEach(one -> pass.sentence(one.getKey(), (ObjectNode) one.getValue()));
    SharedParameters.in(contract);
    return contract;
  }

  private void walk(JsonNode node) {
    if (node instanceof ObjectNode object) {
      includedBounds(object);
      sameAs(object, object.path("items"));
      sameAs(object, object.path("additionalProperties"));
      if (object.has("in")) {
        sameAs(object, object.path("schema"));
        if (object.has("example") && object.path("schema") instanceof ObjectNode schema) {
          schema.remove("example");
        }
      }
      noteReference(object);
    }
    for (var within : node.properties()) {
      if (!within.getKey().equals("example")) {
        walk(within.getValue());
      }
    }
    if (node.isArray()) {
      node.forEach(this::walk);
    }
  }

  private static void includedBounds(ObjectNode schema) {
    for (String name : List.of("exclusiveMinimum", "exclusiveMaximum")) {
      if (schema.path(name).isBoolean() && !schema.path(name).booleanValue()) {
        schema.remove(name);
      }
    }
  }

  /** What stands within says the same as what it stands in. */
  private static void sameAs(ObjectNode outer, JsonNode inner) {
    if (inner instanceof ObjectNode within
        && within.has(TEXT)
        && within.get(TEXT).equals(outer.get(TEXT))) {
      within.remove(TEXT);
    }
  }

  private void noteReference(ObjectNode place) {
    String name = name(place.path("allOf").size() == 1 ? place.at("/allOf/0") : place);
    if (name != null && place.has(TEXT)) {
      described.computeIfAbsent(name, any -> new ArrayList<>()).add(place);
    }
    String entries = name(place.path("items"));
    if (entries != null) {
      listed.computeIfAbsent(entries, any -> new HashSet<>()).add(place.path(TEXT));
    }
  }

  private static String name(JsonNode reference) {
    String to = reference.path("$ref").asText();
    return to.startsWith(REFERENCE) ? to.substring(REFERENCE.length()) : null;
  }

  /**
   * Where all who refer to a record say the same of it, the record says it. Otherwise it keeps
   * silent: swagger-core gives it the sentence of the place that it met last.
   */
  private void sentence(String name, ObjectNode schema) {
    List<ObjectNode> places = described.getOrDefault(name, List.of());
    Set<JsonNode> sentences = new HashSet<>();
    places.forEach(place -> sentences.add(place.get(TEXT)));
    Set<JsonNode> ofLists = listed.getOrDefault(name, Set.of());
    if (sentences.size() == 1 && ofLists.isEmpty()) {
      schema.set(TEXT, sentences.iterator().next());
      places.forEach(SaidOnce::referOnly);
    } else if (sentences.contains(schema.path(TEXT)) || ofLists.contains(schema.path(TEXT))) {
      schema.remove(TEXT);
    }
  }

  private static void referOnly(ObjectNode place) {
    JsonNode reference = place.has("allOf") ? place.at("/allOf/0/$ref") : place.get("$ref");
    place.removeAll();
    place.set("$ref", reference);
  }
}
