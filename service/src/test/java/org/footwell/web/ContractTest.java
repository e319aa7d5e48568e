package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.footwell.Calculations;
import org.junit.jupiter.api.Test;

/** What the contract must say of every field, so that a caller needs no other text. */
class ContractTest {

  private static final ContractDocument CONTRACT = ContractDocument.built();

  private static JsonNode post(String id) {
    return CONTRACT.path("/v1/" + id).path("post");
  }

  private interface Visitor {
    void visit(String path, JsonNode stated, JsonNode schema);
  }

  private static void walkRequests(Visitor visitor) {
    Calculations.all()
        .forEach(
            calculation -> {
              String id = calculation.card().id();
              JsonNode body = post(id).at("/requestBody/content/application~1json/schema");
              walk(id, CONTRACT.resolved(body), visitor);
            });
  }

  private static void walk(String path, JsonNode schema, Visitor visitor) {
    for (var property : schema.path("properties").properties()) {
      String name = path + "/" + property.getKey();
      JsonNode target = CONTRACT.resolved(property.getValue());
      visitor.visit(name, property.getValue(), target);
      walk(name, target, visitor);
      if (target.has("items")) {
        JsonNode entry = CONTRACT.resolved(target.get("items"));
        visitor.visit(name + "/*", target, entry);
        walk(name + "/*", entry, visitor);
      }
    }
  }

  @Test
  void everyFieldOfARequestIsDescribed() {
    List<String> silent = new ArrayList<>();
    walkRequests(
        (path, stated, schema) -> {
          String text = stated.path("description").asText() + schema.path("description").asText();
          if (text.isBlank()) {
            silent.add(path);
          }
        });
    assertEquals(List.of(), silent);
  }

  @Test
  void everyNumberOfARequestHasBothBounds() {
    List<String> unbounded = new ArrayList<>();
    walkRequests(
        (path, stated, schema) -> {
          boolean number = schema.path("type").asText().matches("number|integer");
          boolean bounded = schema.has("minimum") && schema.has("maximum");
          if (number && !bounded && !schema.has("enum")) {
            unbounded.add(path);
          }
        });
    assertEquals(List.of(), unbounded);
  }

  @Test
  void aPolarityOfARequestIsOneOfTwoIntegers() {
    Set<String> ranges = new TreeSet<>();
    walkRequests(
        (path, stated, schema) -> {
          if (path.endsWith("polarity")) {
            ranges.add(schema.path("type").asText() + schema.path("enum"));
          }
        });
    assertEquals(Set.of("integer[-1,1]"), ranges);
  }

  @Test
  void everyGroupOfARequestIsClosed() {
    List<String> open = new ArrayList<>();
    walkRequests(
        (path, stated, schema) -> {
          boolean group = schema.path("type").asText().equals("object");
          if (group && schema.path("additionalProperties").asBoolean(true)) {
            open.add(path);
          }
        });
    assertEquals(List.of(), open);
  }

  @Test
  void everyListAndTextOfARequestHasALimit() {
    List<String> unlimited = new ArrayList<>();
    walkRequests(
        (path, stated, schema) -> {
          String type = schema.path("type").asText();
          boolean free = type.equals("string") && !schema.has("enum") && !schema.has("maxLength");
          if (free || (type.equals("array") && !schema.has("maxItems"))) {
            unlimited.add(path);
          }
        });
    assertEquals(List.of(), unlimited);
  }

  @Test
  void everyExampleFitsItsOwnSchema() {
    Calculations.all()
        .forEach(
            calculation -> {
              JsonNode post = post(calculation.card().id());
              fits(post.at("/requestBody/content/application~1json/schema"));
              fits(post.at("/responses/200/content/application~1json/schema"));
            });
  }

  private static void fits(JsonNode reference) {
    JsonNode example = CONTRACT.resolved(reference).path("example");
    assertTrue(example.isObject(), () -> reference + " has no example");
    assertEquals(List.of(), CONTRACT.faults(reference, example), reference::toString);
  }

  /** The rows that are answered are examples of the single answer; this is the other kind. */
  @Test
  void theExampleOfAFaultyRowIsAProblem() {
    JsonNode json =
        CONTRACT.path("/v1/sound-level/batch").at("/post/responses/200/content/application~1json");
    JsonNode rows = json.at("/examples/faulty/value");
    assertEquals(1, rows.size());
    assertEquals(List.of(), CONTRACT.faults(CONTRACT.reference("Problem"), rows.get(0)));
    assertEquals(List.of(), CONTRACT.undeclared(json.at("/schema/items"), rows.get(0)));
  }

  @Test
  void nothingIsSaidTwice() {
    List<String> twice = new ArrayList<>();
    said("", CONTRACT.root(), twice);
    assertEquals(List.of(), twice);
  }

  private static void said(String place, JsonNode node, List<String> twice) {
    JsonNode text = node.path("description");
    for (String within : List.of("items", "additionalProperties", "schema")) {
      if (text.isTextual() && text.equals(node.path(within).path("description"))) {
        twice.add(place + "/" + within);
      }
    }
    for (String bound : List.of("exclusiveMinimum", "exclusiveMaximum")) {
      if (node.path(bound).isBoolean() && !node.path(bound).booleanValue()) {
        twice.add(place + "/" + bound);
      }
    }
    node.properties().forEach(entry -> said(place + "/" + entry.getKey(), entry.getValue(), twice));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      said(place + "/" + i, node.get(i), twice);
    }
  }

  /**
   * Limits, codes and sources stand with the POST of a single request, that of an analysis included;
   * the others refer to it.
   */
  @Test
  void limitsCodesAndSourcesAreToldOnce() {
    List<String> lengthy = new ArrayList<>();
    CONTRACT
        .operations()
        .forEach(
            (name, operation) -> {
              boolean single = name.matches("post /v1/([a-z-]+|\\{calculation}/(?!sweep)[a-z-]+)");
              String description = operation.path("description").asText();
              if (description.contains("**Sources**") != single) {
                lengthy.add(name);
              }
            });
    assertEquals(List.of(), lengthy);
  }
}
