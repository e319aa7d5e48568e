package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
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
          if (number && !(schema.has("minimum") && schema.has("maximum"))) {
            unbounded.add(path);
          }
        });
    assertEquals(List.of(), unbounded);
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
              String id = calculation.card().id();
              JsonNode question = post(id).at("/requestBody/content/application~1json");
              assertEquals(
                  List.of(), CONTRACT.faults(question.get("schema"), question.get("example")), id);
              JsonNode answer = post(id).at("/responses/200/content/application~1json");
              assertEquals(
                  List.of(), CONTRACT.faults(answer.get("schema"), answer.get("example")), id);
            });
  }
}
