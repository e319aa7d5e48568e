package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** {@code errors=text}: a problem as a sentence with status 200, for cells that hide the rest. */
@ExtendWith(RunningServer.class)
class TextErrorsTest {

  private static void told(String sentence, Response response) {
    assertEquals(sentence, response.asString());
    assertEquals(200, response.statusCode());
    assertEquals("text/plain;charset=utf-8", response.contentType());
    assertEquals("no-store", response.header("Cache-Control"));
  }

  private static Response post(String body) {
    return given().contentType("application/json").body(body).post(PATH + "?errors=text");
  }

  @Test
  void everyFaultOfAQueryIsASentence() {
    told(
        "power_w must be a number from 0.000001 to 50000. driver.rated_ohm is required.",
        given()
            .get(
                PATH
                    + "?errors=text&driver.sensitivity.level_db_spl=90&driver.sensitivity.basis=one_watt"
                    + "&power_w=ten"));
  }

  @Test
  void aMalformedBodyIsASentence() {
    told("The body is not well-formed JSON, at column 1.", post("}"));
  }

  @Test
  void anInvalidBodyIsASentence() {
    told("driver is required. Give exactly one of power_w, voltage_v.", post("{}"));
  }

  @Test
  void aTooLargeBodyIsASentence() {
    told("The body is larger than 1048576 bytes.", post(GOOD + " ".repeat(1_048_577)));
  }

  @Test
  void anUnknownCalculationIsASentence() {
    told(
        "There is no such calculation. Did you mean sound-level?",
        given().get("/v1/soundlevel?errors=text"));
  }

  @Test
  void anUnknownAddressIsASentence() {
    told(
        "There is nothing at this address; see /openapi.json.",
        given().get("/nowhere?errors=text"));
  }

  @Test
  void aWrongMethodIsASentenceThatStillCarriesAllow() {
    Response response = given().delete(PATH + "?errors=text");
    told("DELETE is not allowed here; use GET, HEAD, POST, OPTIONS.", response);
    assertEquals("GET, HEAD, POST, OPTIONS", response.header("Allow"));
  }

  @Test
  void aWrongContentTypeIsASentence() {
    told(
        "Send JSON with the header Content-Type: application/json, not text/plain.",
        given().contentType("text/plain").body(GOOD).post(PATH + "?errors=text"));
  }

  @Test
  void anUnsatisfiableAcceptHeaderIsASentence() {
    told(
        "Accept allows none of application/json, text/plain, text/csv, application/xml.",
        given().header("Accept", "image/png").get(PATH + "?errors=text&" + QUERY));
  }

  @Test
  void aWrongOptionIsASentence() {
    told(
        "format must be one of json, text, csv, xml.",
        given().get(PATH + "?errors=text&format=pdf&" + QUERY));
  }

  @Test
  void aFaultyHeaderOfABatchIsASentence() {
    told(
        "power_w is used more than once.",
        given()
            .contentType("text/csv")
            .body(SoundLevelCalls.HEADER + ",power_w\n")
            .post(PATH + "/batch?errors=text"));
  }

  @Test
  void aGoodAnswerStaysAsItIs() {
    Response response = given().get(PATH + "?errors=text&" + QUERY);
    assertEquals("application/json", response.contentType());
    assertEquals("public, max-age=3600", response.header("Cache-Control"));
  }
}
