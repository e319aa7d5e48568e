package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.RestAssured;
import io.restassured.builder.ResponseBuilder;
import java.net.URI;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The check that watches all other tests must itself be able to fail. */
class ContractFilterTest {

  private static final ContractDocument CONTRACT = ContractDocument.built();
  private static final String GOOD_REQUEST =
      """
      {"driver": {"sensitivity": {"level_db_spl": 90, "basis": "one_watt"}, "rated_ohm": 8},
       "power_w": 10}
      """;
  private static final String GOOD_ANSWER =
      """
      {"result": {"level_db_spl": 100, "peak_level_db_spl": 103, "one_watt_level_db_spl": 90,
       "two_point_eight_three_volt_level_db_spl": 90, "driver_power_w": 10, "driver_count_db": 0,
       "distance_db": 0, "compression_db": 0},
       "findings": [], "verdict": "ok", "safety": []}
      """;
  private static final String PROBLEM =
      """
      {"type": "/problems/invalid", "title": "No", "status": 422, "detail": "No.", "errors": []}
      """;

  private static List<String> afterPost(String request, int status, String type, String answer) {
    return faults("POST", "/v1/sound-level", request, status, type, answer);
  }

  private static List<String> faults(
      String method, String address, String request, int status, String type, String answer) {
    Map<String, String> headers =
        Map.of("Footwell-Verdict", "ok", "ETag", "\"1\"", "Cache-Control", "public");
    return new ContractCheck(CONTRACT)
        .faults(
            new ContractCheck.Asked(method, URI.create(address), "application/json", request),
            new ContractCheck.Told(status, type, headers::get, answer));
  }

  @Test
  void aGoodExchangeHasNoFaults() {
    assertEquals(List.of(), afterPost(GOOD_REQUEST, 200, "application/json", GOOD_ANSWER));
  }

  @Test
  void aProblemForABadRequestHasNoFaults() {
    assertEquals(List.of(), afterPost("{}", 422, "application/problem+json", PROBLEM));
  }

  @Test
  void aMissingFieldOfTheAnswerIsFound() {
    String answer = GOOD_ANSWER.replace("\"verdict\": \"ok\", ", "");
    assertEquals(
        List.of(": required property 'verdict' not found"),
        afterPost(GOOD_REQUEST, 200, "application/json", answer));
  }

  @Test
  void aWrongTypeDeepInTheAnswerIsFound() {
    String answer = GOOD_ANSWER.replace("\"level_db_spl\": 100", "\"level_db_spl\": \"100\"");
    assertEquals(
        List.of("/result/level_db_spl: string found, number expected"),
        afterPost(GOOD_REQUEST, 200, "application/json", answer));
  }

  @Test
  void anUndeclaredFieldOfTheAnswerIsFound() {
    String answer = GOOD_ANSWER.replace("\"level_db_spl\": 100", "\"level_db_spl\": 100, \"x\": 1");
    assertEquals(1, afterPost(GOOD_REQUEST, 200, "application/json", answer).size());
  }

  @Test
  void anUndeclaredVerdictIsFound() {
    String answer = GOOD_ANSWER.replace("\"verdict\": \"ok\"", "\"verdict\": \"fine\"");
    assertEquals(1, afterPost(GOOD_REQUEST, 200, "application/json", answer).size());
  }

  @Test
  void anAnswerToARequestTheContractForbidsIsFound() {
    String request = GOOD_REQUEST.replace("\"rated_ohm\": 8", "\"rated_ohm\": 8000");
    assertEquals(
        List.of("/driver/rated_ohm: must have a maximum value of 1000"),
        afterPost(request, 200, "application/json", GOOD_ANSWER));
  }

  @Test
  void anUndeclaredFieldOfTheRequestIsFound() {
    String request = GOOD_REQUEST.replace("\"rated_ohm\": 8", "\"rated_ohm\": 8, \"colour\": 1");
    assertEquals(1, afterPost(request, 200, "application/json", GOOD_ANSWER).size());
  }

  @Test
  void anUndeclaredStatusIsFound() {
    assertEquals(
        List.of("status 201 is not declared"),
        afterPost(GOOD_REQUEST, 201, "application/json", GOOD_ANSWER));
  }

  @Test
  void anUndeclaredContentTypeIsFound() {
    assertEquals(
        List.of("content type text/html is not declared for the answer"),
        afterPost(GOOD_REQUEST, 200, "text/html", GOOD_ANSWER));
  }

  @Test
  void aProblemThatStatesAnotherStatusIsFound() {
    assertEquals(
        List.of("the problem states 422, not 400"),
        afterPost("{}", 400, "application/problem+json", PROBLEM));
  }

  @Test
  void anUndeclaredQueryParameterIsFound() {
    assertEquals(
        List.of("query parameter speed is not declared"),
        faults(
            "POST", "/v1/sound-level?speed=5", GOOD_REQUEST, 200, "application/json", GOOD_ANSWER));
  }

  @Test
  void furtherEntriesOfAGroupAreHeldAgainstTheFirst() {
    String address = "/v1/sound-level?" + SoundLevelCalls.QUERY + "&spectrum.7.frequency_hz=";
    assertEquals(
        List.of(), faults("GET", address + "100", "", 200, "application/json", GOOD_ANSWER));
    assertEquals(
        List.of(": must have a maximum value of 40000"),
        faults("GET", address + "100000", "", 200, "application/json", GOOD_ANSWER));
  }

  @Test
  void anUnknownPathThatIsAnsweredIsFound() {
    assertEquals(
        List.of("answered, but no operation of the contract"),
        faults("GET", "/v1/horoscope", "", 200, "application/json", GOOD_ANSWER));
  }

  @Test
  void aWrongRowOfABatchIsFound() {
    assertEquals(
        List.of(": required property 'verdict' not found"),
        faults(
            "POST",
            "/v1/sound-level/batch",
            "[{}]",
            200,
            "application/json",
            "[" + GOOD_ANSWER.replace("\"verdict\": \"ok\", ", "") + "]"));
  }

  @Test
  void anUndeclaredFieldOfARowIsFound() {
    String row = PROBLEM.replace("\"title\"", "\"kind\": 1, \"title\"");
    List<String> faults =
        faults("POST", "/v1/sound-level/batch", "[{}]", 200, "application/json", "[" + row + "]");
    assertTrue(faults.contains("a row has the undeclared field kind"), faults::toString);
  }

  @Test
  void aBoundThatIsNotIncludedIsKept() {
    JsonNode above0 = Example.read("{\"type\":\"number\",\"minimum\":0,\"exclusiveMinimum\":true}");
    assertEquals(1, CONTRACT.faults(above0, Example.read("0")).size());
    assertEquals(List.of(), CONTRACT.faults(above0, Example.read("0.1")));
  }

  @Test
  void restAssuredFailsWhenTheFilterFindsSomething() {
    AssertionError failure =
        assertThrows(
            AssertionError.class,
            () ->
                RestAssured.given()
                    .filter(new ContractFilter(CONTRACT))
                    .filter(
                        (request, expected, context) ->
                            new ResponseBuilder()
                                .setStatusCode(200)
                                .setContentType("application/json")
                                .setHeader("Footwell-Verdict", "ok")
                                .setBody(GOOD_ANSWER.replace("[]", "5"))
                                .build())
                    .contentType("application/json")
                    .body(GOOD_REQUEST)
                    .post("/v1/sound-level"));
    assertTrue(
        failure.getMessage().contains("/findings: integer found, array expected"),
        failure.getMessage());
  }
}
