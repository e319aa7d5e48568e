package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.response.Response;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Shape;
import org.footwell.calculation.text.Quantity;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bounds for who reads inches: each stands in feet or inches and is allowed itself, and what lies beyond is not. */
@ExtendWith(RunningServer.class)
@Tag("long")
class BoundsInInchesTest {

  private static final Pattern RANGE =
      Pattern.compile("from (-?[\\d.]+) (in|ft|in²|in³|ft³) to (-?[\\d.]+) \\2");

  private static final String LEVEL =
      "/v1/sound-level?power_w=50&driver.sensitivity.level_db_spl=90"
          + "&driver.sensitivity.basis=one_watt&driver.rated_ohm=4&units=inch&distance_m=";

  /** A field of a request that is a length, an area or a volume in inches. */
  record Field(String calculation, String name) {}

  static Stream<Field> fields() {
    return Example.flat()
        .flatMap(
            example ->
                Shape.of(calculation(example).card().request()).columns().stream()
                    .map(Shape.Column::path)
                    .filter(path -> !path.endsWith("*") && !path.endsWith("_mm2"))
                    .filter(Quantity::mayHaveUnit)
                    .map(path -> new Field(example.id(), path.replace("*", "0"))));
  }

  private static Calculation<?, ?> calculation(Example example) {
    return Calculations.all().stream()
        .filter(one -> one.card().id().equals(example.id()))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("fields")
  void aStatedBoundIsAllowedAndWhatLiesBeyondIsNot(Field field) {
    String told = fault(field, "1000000000", "");
    MatchResult range = RANGE.matcher(told).results().findFirst().orElseThrow();
    String unit = range.group(2).replace('²', '2').replace('³', '3');
    for (int end : List.of(1, 3)) {
      BigDecimal bound = new BigDecimal(range.group(end));
      BigDecimal step = end == 1 ? bound.ulp().negate() : bound.ulp();
      assertEquals("", fault(field, bound.toPlainString(), unit), told);
      assertFalse(fault(field, bound.add(step).toPlainString(), unit).isEmpty(), told);
    }
  }

  @Test
  void thereAreManySuchFields() {
    assertTrue(fields().count() > 60, fields().count() + " fields");
  }

  /** What is said of a field with this value, and of no other. */
  private static String fault(Field field, String number, String unit) {
    String value = "=" + (unit.isEmpty() ? number : number + "%20" + unit);
    // Some lists must have two entries before any is looked at.
    String second = field.name().replace(".0.", ".1.");
    String more = second.equals(field.name()) ? "" : "&" + second + value;
    Response answer =
        given().get("/v1/" + field.calculation() + "?units=inch&" + field.name() + value + more);
    for (JsonNode fault : Example.read(answer.asString()).path("errors")) {
      boolean here = fault.get("pointer").asText().equals("/" + field.name().replace('.', '/'));
      if (here && fault.get("code").asText().equals("not-allowed")) {
        return fault.get("detail").asText();
      }
    }
    return "";
  }

  @Test
  void whatWasGivenIsToldInTheSameUnit() {
    given()
        .get(LEVEL + "400%20ft")
        .then()
        .statusCode(422)
        .body("errors.given", contains("400 ft"))
        .body("errors.allowed", contains("a number from 0.1641 ft to 328 ft"));
    given().get(LEVEL + "400%20ft&errors=text").then().body(containsString("to 328 ft."));
    given().get(LEVEL + "400%20ft&lang=de").then().body("detail", containsString("0.1641 ft"));
  }

  @Test
  void whatIsNotInOrderIsToldSoToo() {
    String range = "&input=distance_m&output=level_db_spl&target=100&from=9 ft&to=6 ft";
    String within = LEVEL.replace("?", "/solve?").replaceAll("(power|driver)", "request.$1");
    String asked = within.replace("&distance_m=", "") + range.replace(" ", "%20");
    given()
        .get(asked)
        .then()
        .statusCode(422)
        .body("errors.code", contains("not-ascending"))
        .body("errors.given", contains("6 ft"))
        .body("errors.allowed", contains(containsString("9 ft")));
  }

  @Test
  void aBatchSaysSoToo() {
    String rows =
        """
        power_w,driver.sensitivity.level_db_spl,driver.sensitivity.basis,driver.rated_ohm,distance_m
        50,90,one_watt,4,400 ft
        """;
    String metric = batch(rows, "text/csv", "");
    assertTrue(metric.contains("from 0.05 to 100."), metric);
    String inch = batch(rows, "text/csv", "&units=inch");
    assertTrue(inch.contains("from 0.1641 ft to 328 ft."), inch);
    String line = "{\"distance_m\": 400}\n";
    String told = batch(line, "application/x-ndjson", "&units=inch");
    assertTrue(told.contains("from 0.1641 ft to 328 ft."), told);
  }

  private static String batch(String rows, String type, String units) {
    return given()
        .contentType(type)
        .body(rows)
        .post("/v1/sound-level/batch?digits=4" + units)
        .asString();
  }

  @Test
  void whoReadsMetresReadsWhatARequestWrites() {
    given()
        .get(LEVEL.replace("&units=inch", "") + "400")
        .then()
        .body("errors[0].given", equalTo("400.0"))
        .body("errors[0].allowed", equalTo("a number from 0.05 to 100"));
  }
}
