package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.response.Response;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.footwell.calculation.text.Texts;
import org.footwell.web.request.ProblemType;

/** A problem answer, checked for what every problem answer must be. */
record Refusal(JsonNode problem) {

  private static final Pattern INSIDES =
      Pattern.compile(
          "org\\.|com\\.|java\\.|jakarta|jackson|jetty|javalin|servlet|Exception|Throwable|\\tat |<html",
          Pattern.CASE_INSENSITIVE);

  static Refusal of(Response response, int status) {
    String body = response.asString();
    assertEquals(status, response.statusCode(), body);
    assertEquals("application/problem+json", response.contentType());
    assertEquals("no-store", response.header("Cache-Control"));
    return of(body, status);
  }

  static Refusal of(String body, int status) {
    tellsNothingOfTheInside(body);
    JsonNode problem = Example.read(body);
    assertEquals(status, problem.path("status").asInt(), body);
    for (ProblemType type : ProblemType.values()) {
      if (type.uri().equals(problem.path("type").asText())) {
        assertEquals(Texts.of(type), problem.path("title").asText());
      }
    }
    assertTrue(problem.path("type").asText().startsWith("/problems/"), body);
    assertFalse(problem.path("detail").asText().isBlank(), body);
    for (JsonNode error : problem.path("errors")) {
      assertTrue(error.path("pointer").isTextual(), body);
      assertTrue(error.path("code").asText().matches("[a-z]+(-[a-z]+)*"), body);
      assertFalse(error.path("detail").asText().isBlank(), body);
    }
    return new Refusal(problem);
  }

  static void tellsNothingOfTheInside(String body) {
    assertFalse(INSIDES.matcher(body).find(), body);
  }

  /** Every fault as its pointer and code, sorted. */
  Set<String> faults() {
    Set<String> faults = new TreeSet<>();
    for (JsonNode error : problem.path("errors")) {
      faults.add(error.path("pointer").asText() + " " + error.path("code").asText());
    }
    return faults;
  }

  String detail() {
    return problem.path("detail").asText();
  }

  /** The sentence about one place. */
  String detailAt(String pointer) {
    for (JsonNode error : problem.path("errors")) {
      if (error.path("pointer").asText().equals(pointer)) {
        return error.path("detail").asText();
      }
    }
    throw new AssertionError("nothing about " + pointer + " in " + problem);
  }
}
