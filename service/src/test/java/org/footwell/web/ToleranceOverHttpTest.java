package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** An error budget comes in the forms of any answer; what it says is tested beside its mathematics. */
@ExtendWith(RunningServer.class)
class ToleranceOverHttpTest {

  private static final String PATH = "/v1/sound-level/tolerance";

  private static final String LEVEL =
      """
      {"request": {"driver": {"rated_ohm": 8,
         "sensitivity": {"level_db_spl": 90, "basis": "one_watt"}}, "power_w": 20},
       "usual_tolerances": true, "outputs": ["level_db_spl"], "sample_count": %d, "indices": %s}
      """;

  private static Response post(String query, int samples, boolean indices) {
    return given()
        .contentType("application/json")
        .body(LEVEL.formatted(samples, indices))
        .post(PATH + query);
  }

  @Test
  void answersInAnEnvelope() {
    for (boolean indices : new boolean[] {false, true}) {
      post("?workings=true", 128, indices)
          .then()
          .statusCode(200)
          .body("result.run_count", equalTo(indices ? 512 : 128))
          .body("result.outputs[0].path", equalTo("level_db_spl"))
          .body("result.inputs.path", contains("driver.sensitivity.level_db_spl", "power_w"))
          .body("findings[0].code", equalTo("measure-first"))
          .body("workings.quantity", hasItems("deviation_left", "deviation", "outputs.0.p95"));
    }
  }

  @Test
  void aCellAndTheFormatsOfAnyAnswer() {
    String mean = post("?field=outputs.0.mean", 128, false).asString();
    assertEquals(
        Example.read(post("", 128, false).asString()).at("/result/outputs/0/mean").asDouble(),
        Double.parseDouble(mean));
    post("?format=text", 128, false)
        .then()
        .statusCode(200)
        .body(containsString("driver.sensitivity.level_db_spl"));
    post("?format=csv", 128, false)
        .then()
        .statusCode(200)
        .header("Content-Type", containsString("text/csv"));
    post("?format=xml", 128, false)
        .then()
        .statusCode(200)
        .header("Content-Type", containsString("application/xml"));
  }

  @Test
  void whatCostsTooMuchSaysWhatFits() {
    post("", 99_999, true)
        .then()
        .statusCode(422)
        .body("errors.code", contains("too-many-runs"))
        .body("errors[0].pointer", equalTo("/sample_count"))
        .body("errors[0].allowed", equalTo("at most 25000"));
  }

  @Test
  void ofWhatIsUnknownTheNearestIsTold() {
    given()
        .contentType("application/json")
        .body(LEVEL.formatted(128, false))
        .post("/v1/sound-levl/tolerance")
        .then()
        .statusCode(404)
        .body("detail", containsString("sound-level"));
  }
}
