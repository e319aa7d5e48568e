package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A batch gives what single requests give, for every calculation and in every form. */
@ExtendWith(RunningServer.class)
class EveryBatchTest {

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void takesBatchesByPostOnly(Example example) {
    String allow = "POST, OPTIONS";
    String path = example.path() + "/batch";
    given().options(path).then().statusCode(204).header("Allow", equalTo(allow));
    given().get(path).then().statusCode(405).header("Allow", equalTo(allow));
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void answersABatchOfLinesAsItAnswersEach(Example example) {
    JsonNode single = example.answer();
    List<String> lines =
        given()
            .contentType("application/x-ndjson")
            .body(example.question() + "\n" + example.question() + "\n")
            .post(example.path() + "/batch")
            .asString()
            .lines()
            .toList();
    assertEquals(List.of(single, single), lines.stream().map(Example::read).toList());
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void answersABatchInAnArrayAsItAnswersEach(Example example) {
    JsonNode single = example.answer();
    JsonNode rows =
        Example.read(
            given()
                .contentType("application/json")
                .body("[" + example.question() + "," + example.question() + "]")
                .post(example.path() + "/batch")
                .asString());
    assertEquals(2, rows.size());
    assertEquals(single, rows.get(0));
    assertEquals(single, rows.get(1));
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#flat")
  void answersABatchInCsvAsItAnswersEach(Example example) {
    JsonNode single = example.answer();
    Map<String, String> row =
        Table.of(
                given()
                    .contentType("text/csv")
                    .body(example.csv())
                    .post(example.path() + "/batch")
                    .asString())
            .row(0);
    assertEquals("", row.get("error"));
    assertEquals(single.get("verdict").asText(), row.get("verdict"));
    single
        .get("result")
        .properties()
        .forEach(
            entry -> {
              if (entry.getValue().isNumber()) {
                assertEquals(
                    entry.getValue().doubleValue(),
                    Double.parseDouble(
                        row.getOrDefault("result." + entry.getKey(), row.get(entry.getKey()))),
                    entry.getKey());
              }
            });
  }
}
