package org.footwell.openapi;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * What callers of a contract depend on: by place, the facts that hold there, in the words of the
 * contract. A place reads {@code /v1/level post > application/json cabin.length_m}: the operation,
 * {@code ?} for the query, {@code >} for what is sent and {@code <} for what comes back, and the
 * field, with {@code *} for every entry of a list and {@code {name}} for any name. Schemas are
 * followed wherever they are referred to, so their own names are no promise.
 */
final class Promises {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** What a schema says of one value; a text beside it is for people. */
  private static final String[] FACTS = {
    "type",
    "format",
    "nullable",
    "enum",
    "default",
    "minimum",
    "exclusiveMinimum",
    "maximum",
    "exclusiveMaximum",
    "minLength",
    "maxLength",
    "minItems",
    "maxItems",
    "uniqueItems",
    "pattern",
  };

  private final JsonNode contract;
  private final SortedMap<String, ObjectNode> facts = new TreeMap<>();

  /** References that are being followed, so that a schema within itself comes to an end. */
  private final Deque<String> followed = new ArrayDeque<>();

  private Promises(JsonNode contract) {
    this.contract = contract;
  }

  static SortedMap<String, ObjectNode> of(JsonNode contract) {
    Promises promises = new Promises(contract);
    for (var path : contract.path("paths").properties()) {
      for (var operation : path.getValue().properties()) {
        promises.operation(path.getKey() + " " + operation.getKey(), operation.getValue());
      }
    }
    return promises.facts;
  }

  private ObjectNode at(String place) {
    return facts.computeIfAbsent(place, any -> MAPPER.createObjectNode());
  }

  private void operation(String place, JsonNode operation) {
    at(place).set("operationId", operation.path("operationId"));
    for (JsonNode referred : operation.path("parameters")) {
      JsonNode parameter = resolved(referred);
      String name = place + " ?" + parameter.path("name").asText();
      schema(name, parameter.path("schema"), parameter.path("required").asBoolean());
      for (String fact : new String[] {"in", "style", "explode"}) {
        if (parameter.has(fact) && !parameter.path(fact).asText().equals("query")) {
          at(name).set(fact, parameter.get(fact));
        }
      }
    }
    JsonNode body = resolved(operation.path("requestBody"));
    if (!body.isMissingNode()) {
      required(at(place + " >"), body.path("required").asBoolean());
      content(place + " >", body);
    }
    for (var answer : operation.path("responses").properties()) {
      JsonNode declared = resolved(answer.getValue());
      statuses(answer.getKey(), declared).forEach(one -> answer(place + " < " + one, declared));
    }
  }

  /** A range stands for the statuses that its sentence names. */
  private static List<String> statuses(String status, JsonNode declared) {
    if (!status.endsWith("XX")) {
      return List.of(status);
    }
    String named = "\\b" + status.charAt(0) + "\\d\\d\\b";
    String sentence = declared.path("description").asText();
    return Pattern.compile(named).matcher(sentence).results().map(MatchResult::group).toList();
  }

  private void answer(String place, JsonNode declared) {
    at(place);
    for (var header : declared.path("headers").properties()) {
      JsonNode schema = resolved(header.getValue()).path("schema");
      schema(place + " header " + header.getKey(), schema, false);
    }
    content(place, declared);
  }

  private void content(String place, JsonNode holder) {
    for (var type : holder.path("content").properties()) {
      schema(place + " " + type.getKey(), type.getValue().path("schema"), false);
    }
  }

  private void schema(String place, JsonNode stated, boolean required) {
    ObjectNode here = at(place);
    required(here, required);
    JsonNode schema = stated;
    int depth = followed.size();
    while (schema.has("$ref")) {
      String to = schema.get("$ref").asText();
      if (followed.contains(to)) {
        here.put("within", true);
        unfollow(depth);
        return;
      }
      followed.push(to);
      schema = resolved(schema);
    }
    state(here, schema);
    children(place, schema);
    for (JsonNode part : schema.path("allOf")) {
      schema(place, part, false);
    }
    for (String choice : new String[] {"oneOf", "anyOf"}) {
      if (schema.has(choice)) {
        throw new IllegalArgumentException(
            place + " has " + choice + ", which clients cannot type");
      }
    }
    unfollow(depth);
  }

  private static void required(ObjectNode here, boolean required) {
    if (required) {
      here.put("required", true);
    }
  }

  private void unfollow(int depth) {
    while (followed.size() > depth) {
      followed.pop();
    }
  }

  private static void state(ObjectNode here, JsonNode schema) {
    for (String fact : FACTS) {
      // A bound that is not exclusive, a value that is not nullable: as if nothing were said.
      boolean nothing = !fact.equals("default") && schema.path(fact).asText().equals("false");
      if (schema.has(fact) && !nothing) {
        here.set(fact, schema.get(fact));
      }
    }
    if (schema.has("additionalProperties") && !schema.get("additionalProperties").asBoolean(true)) {
      here.put("closed", true);
    }
  }

  private void children(String place, JsonNode schema) {
    for (var property : schema.path("properties").properties()) {
      schema(within(place, property.getKey()), property.getValue(), false);
    }
    // What is required may be described elsewhere, or nowhere.
    for (JsonNode name : schema.path("required")) {
      required(at(within(place, name.asText())), true);
    }
    if (schema.has("items")) {
      schema(within(place, "*"), schema.get("items"), false);
    }
    if (schema.path("additionalProperties").isObject()) {
      schema(within(place, "{name}"), schema.get("additionalProperties"), false);
    }
  }

  /** The first field of a body stands apart from its media type, those below it behind dots. */
  private static String within(String place, String name) {
    String last = place.substring(place.lastIndexOf(' ') + 1);
    return place + (last.contains("/") ? " " : ".") + name;
  }

  private JsonNode resolved(JsonNode node) {
    JsonNode here = node;
    while (here.has("$ref")) {
      here = contract.at(here.get("$ref").asText().substring(1));
    }
    return here;
  }
}
