package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Inches, feet and gauges at the edge: what they give is what millimetres give. */
@ExtendWith(RunningServer.class)
class UnitsTest {

  private static final String LEVEL =
      "/v1/sound-level?power_w=50&driver.sensitivity.level_db_spl=90"
          + "&driver.sensitivity.basis=one_watt&driver.rated_ohm=4&distance_m=";

  @Test
  void aQueryMayHaveFeet() {
    String metric = given().get(LEVEL + "1.8288").asString();
    assertTrue(metric.contains("verdict"), metric);
    assertEquals(metric, given().get(LEVEL + "6%20ft").asString());
    assertEquals(metric, given().get(LEVEL + "72%20in").asString());
  }

  @Test
  void aRowMayHaveThem() {
    String head =
        "power_w,driver.sensitivity.level_db_spl,driver.sensitivity.basis,driver.rated_ohm,distance_m\n";
    String rows = "50,90,one_watt,4,1.8288\n50,90,one_watt,4,6 ft\n";
    String[] lines =
        given()
            .contentType("text/csv")
            .body(head + rows)
            .post("/v1/sound-level/batch?columns=level_db_spl")
            .asString()
            .split("\\R", -1);
    assertEquals(lines[1].replace("1.8288", "6 ft"), lines[2]);
    assertTrue(lines[1].split(",", -1).length > 6, lines[1]);
  }

  @Test
  void whatIsNoLengthIsToldHowToWriteOne() {
    given()
        .get(LEVEL + "6%20lb")
        .then()
        .statusCode(422)
        .body("errors[0].pointer", equalTo("/distance_m"))
        .body("errors[0].detail", containsString("such as 9 cm, 3 1/2 in, 12 ft"));
  }

  /** JSON has numbers, and the contract says so. */
  @Test
  void aBodyHasNumbersOnly() {
    given()
        .contentType("application/json")
        .body("{\"distance_m\": \"6 ft\"}")
        .post("/v1/sound-level")
        .then()
        .statusCode(422)
        .body("errors.find { it.pointer == '/distance_m' }.code", equalTo("wrong-type"));
  }

  @Test
  void sheetsAreReadInInches() {
    Example plan =
        Example.all().filter(one -> one.path().endsWith("plan-review")).findFirst().orElseThrow();
    ObjectNode question = (ObjectNode) plan.question();
    String metric = fitter(question, "");
    String inch = fitter(question, "&units=inch");
    double x = question.at("/drivers/0/position/x_m").doubleValue();
    assertTrue(inch.contains("\u00a0ft"), "lengths in feet");
    assertTrue(metric.contains("\u00a0m<") && !metric.contains("\u00a0ft"), "and in metres");
    String feet =
        new java.math.BigDecimal(x / 0.3048)
            .setScale(2, java.math.RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString();
    assertTrue(inch.contains(feet + "\u00a0ft"), feet);
    assertEquals(metric, fitter(question, "&units=metric"));
  }

  private static String fitter(ObjectNode question, String more) {
    return given()
        .contentType("application/json")
        .body(question.toString())
        .post("/v1/plan-review?format=fitter.html" + more)
        .asString();
  }

  @Test
  void anotherSystemIsNotGuessed() {
    given()
        .get(LEVEL + "1&units=furlong")
        .then()
        .statusCode(422)
        .body("errors[0].pointer", equalTo("/units"))
        .body("errors[0].detail", containsString("metric, inch"))
        .body("errors[0].detail", not(containsString("null")));
  }
}
