package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.Response;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Shape;

/** The worked example of a card in all the ways it can be sent. */
record Example(String id, JsonNode question) {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  static Example of(Calculation<?, ?> calculation) {
    return new Example(calculation.card().id(), read(calculation.card().example()));
  }

  static JsonNode read(String json) {
    try {
      return MAPPER.readTree(json);
    } catch (JsonProcessingException e) {
      throw new AssertionError("not JSON: " + json, e);
    }
  }

  static Stream<Example> all() {
    return Calculations.all().stream().map(Example::of);
  }

  static Stream<Example> flat() {
    return Calculations.all().stream()
        .filter(calculation -> Shape.of(calculation.card().request()).flat())
        .map(Example::of);
  }

  static Stream<Example> notFlat() {
    return Calculations.all().stream()
        .filter(calculation -> !Shape.of(calculation.card().request()).flat())
        .map(Example::of);
  }

  /** Posts the example; the query given starts with a question mark or is empty. */
  Response post(String query) {
    return RunningServer.given()
        .contentType("application/json")
        .body(question.toString())
        .post(path() + query);
  }

  /** The whole answer to the example, in JSON. */
  JsonNode answer() {
    Response response = post("");
    assertEquals(200, response.statusCode(), response::asString);
    return read(response.asString());
  }

  String path() {
    return "/v1/" + id;
  }

  /** Leaves by dotted name. */
  Map<String, String> cells() {
    Map<String, String> cells = new LinkedHashMap<>();
    flatten("", question, cells);
    return cells;
  }

  static void flatten(String path, JsonNode node, Map<String, String> into) {
    String prefix = path.isEmpty() ? "" : path + ".";
    if (node.isObject()) {
      node.properties().forEach(entry -> flatten(prefix + entry.getKey(), entry.getValue(), into));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        flatten(prefix + i, node.get(i), into);
      }
    } else {
      into.put(path, node.asText());
    }
  }

  String query() {
    return cells().entrySet().stream()
        .map(
            cell ->
                cell.getKey() + "=" + URLEncoder.encode(cell.getValue(), StandardCharsets.UTF_8))
        .collect(Collectors.joining("&"));
  }

  /** Path and query of the GET. */
  String address() {
    return path() + "?" + query();
  }

  /** Header and one row; cells with a comma in quotes. */
  String csv() {
    String row =
        cells().values().stream()
            .map(cell -> cell.contains(",") ? "\"" + cell + "\"" : cell)
            .collect(Collectors.joining(","));
    return String.join(",", cells().keySet()) + "\n" + row + "\n";
  }

  @Override
  public String toString() {
    return id;
  }
}
