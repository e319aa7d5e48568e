package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Batches in JSON: a request a line, or an array of requests. */
@ExtendWith(RunningServer.class)
class JsonBatchTest {

  private static final String LARGE = "An entry is larger than 1048576 bytes.";

  private static List<JsonNode> lines(String body) {
    Response response =
        given().contentType("application/x-ndjson").body(body).post(PATH + "/batch");
    assertEquals(200, response.statusCode(), response::asString);
    assertEquals("application/x-ndjson", response.contentType());
    assertEquals("no-store", response.header("Cache-Control"));
    Refusal.tellsNothingOfTheInside(response.asString());
    return response.asString().lines().map(Example::read).toList();
  }

  private static JsonNode array(String body) {
    Response response = given().contentType("application/json").body(body).post(PATH + "/batch");
    assertEquals(200, response.statusCode(), response::asString);
    assertEquals("application/json", response.contentType());
    Refusal.tellsNothingOfTheInside(response.asString());
    return Example.read(response.asString());
  }

  private static double level(JsonNode answer) {
    return answer.at("/result/level_db_spl").asDouble(Double.NaN);
  }

  @Test
  void aBadLineCarriesItsOwnProblemAndStopsNothing() {
    List<JsonNode> answers = lines(GOOD + "\n{\n{}\nnull\n" + with("power_w", "100") + "\n");
    assertEquals(5, answers.size());
    assertEquals(100, level(answers.get(0)));
    assertEquals(400, Refusal.of(answers.get(1).toString(), 400).problem().get("status").asInt());
    assertEquals(2, answers.get(1).get("line").asInt());
    assertEquals(2, Refusal.of(answers.get(2).toString(), 422).faults().size());
    assertEquals(3, answers.get(2).get("line").asInt());
    assertEquals("The body is null.", Refusal.of(answers.get(3).toString(), 400).detail());
    assertEquals(110, level(answers.get(4)));
  }

  @Test
  void anEntryOfAnArrayCarriesItsOwnProblemAndStopsNothing() {
    String twice = GOOD.replaceFirst("\\{", "{\"power_w\": 1, ");
    String deep = "[".repeat(200) + "]".repeat(200);
    JsonNode answers = array("[" + String.join(",", twice, deep, "null", GOOD) + "]");
    assertEquals(4, answers.size());
    assertTrue(
        Refusal.of(answers.get(0).toString(), 400).detail().contains("the same field twice"));
    assertTrue(Refusal.of(answers.get(1).toString(), 400).detail().contains("nesting"));
    assertEquals("The body is null.", Refusal.of(answers.get(2).toString(), 400).detail());
    assertEquals(100, level(answers.get(3)));
  }

  @Test
  void whatFollowsAnArrayIsTold() {
    for (String rest : List.of("garbage", "[" + GOOD + "]", "{}")) {
      JsonNode answers = array("[" + GOOD + "] " + rest);
      assertEquals(2, answers.size());
      assertTrue(
          Refusal.of(answers.get(1).toString(), 400)
              .detail()
              .startsWith("The array breaks off after 1 entry. "),
          answers::toString);
    }
  }

  @Test
  void blankLinesAreSkippedButCounted() {
    List<JsonNode> answers = lines("\n  \n" + GOOD + "\r\n\r\n{\n");
    assertEquals(2, answers.size());
    assertEquals(5, answers.get(1).get("line").asInt());
  }

  @Test
  void theLastLineNeedsNoEnd() {
    assertEquals(List.of(100.0), lines(GOOD).stream().map(JsonBatchTest::level).toList());
    assertEquals(List.of(), lines(""));
  }

  @Test
  void aLineThatIsTooLongIsPassedOver() {
    Map<String, String> small = Map.of("FOOTWELL_BODY_BYTES", "1000");
    try (Server server = RunningServer.start(small)) {
      String padded = GOOD + " ".repeat(1_000 - GOOD.length());
      String body = padded + " \n" + padded + "\n" + "x".repeat(50_000) + "\n" + GOOD + "\n";
      List<JsonNode> answers =
          given(server.port())
              .contentType("application/x-ndjson")
              .body(body)
              .post(PATH + "/batch")
              .asString()
              .lines()
              .map(Example::read)
              .toList();
      assertEquals(4, answers.size());
      Refusal tooLong = Refusal.of(answers.get(0).toString(), 413);
      assertEquals("The line is longer than 1000 bytes.", tooLong.detail());
      assertEquals(100, level(answers.get(1)));
      assertEquals(3, answers.get(2).get("line").asInt());
      assertEquals(100, level(answers.get(3)));
    }
  }

  @Test
  void manyLinesStayInOrder() {
    String body =
        IntStream.rangeClosed(1, 2_000)
            .mapToObj(i -> with("power_w", Integer.toString(i)))
            .collect(Collectors.joining("\n"));
    assertEquals(
        IntStream.rangeClosed(1, 2_000).mapToObj(i -> (double) i).toList(),
        lines(body).stream().map(row -> row.at("/result/driver_power_w").asDouble()).toList());
  }

  @Test
  void anArrayIsAnsweredWithAnArray() {
    JsonNode answers = array(" [ " + GOOD + " , {} , 5, null, " + with("power_w", "1") + " ] \n");
    assertEquals(5, answers.size());
    assertEquals(100, level(answers.get(0)));
    assertEquals(2, answers.get(1).get("line").asInt());
    Refusal.of(answers.get(1).toString(), 422);
    Refusal.of(answers.get(2).toString(), 422);
    Refusal.of(answers.get(3).toString(), 400);
    assertEquals(90, level(answers.get(4)));
    assertEquals(0, array("[]").size());
  }

  @Test
  void anArrayThatBreaksOffIsAnsweredUpToThereAndSaysSo() {
    for (String broken : List.of("", ",", ",{\"rated_ohm\":", " {}")) {
      JsonNode answers = array("[" + GOOD + broken);
      assertEquals(2, answers.size(), broken);
      assertEquals(100, level(answers.get(0)));
      Refusal refusal = Refusal.of(answers.get(1).toString(), 400);
      assertTrue(
          refusal.detail().startsWith("The array breaks off after 1 entry. The body "),
          refusal.detail());
      assertEquals(2, answers.get(1).get("line").asInt());
    }
  }

  @Test
  void blanksAnywhereAreOfAnEntryAndMayNotBeTooMany() {
    String blanks = " ".repeat(1_100_000);
    Response before =
        given()
            .contentType("application/json")
            .body(blanks + "[" + GOOD + "]")
            .post(PATH + "/batch");
    assertEquals(LARGE, Refusal.of(before, 413).detail());
    JsonNode between = array("[" + GOOD + "," + blanks + GOOD + "]");
    assertEquals(100, level(between.get(0)));
    assertTrue(Refusal.of(between.get(1).toString(), 413).detail().endsWith(LARGE));
    JsonNode after = array("[" + GOOD + "]" + blanks);
    assertEquals(100, level(after.get(0)));
    assertTrue(Refusal.of(after.get(1).toString(), 413).detail().endsWith(LARGE));
  }

  @Test
  void aBodyThatIsNoArrayIsRefusedAtOnce() {
    for (String body : List.of(GOOD, "", "x")) {
      Response response = given().contentType("application/json").body(body).post(PATH + "/batch");
      assertEquals(400, response.statusCode());
      assertEquals("The body must be a JSON array.", Refusal.of(response.asString(), 400).detail());
    }
  }

  @Test
  void aBatchOfAnotherTypeIsNotRead() {
    Response response = given().contentType("text/plain").body(GOOD).post(PATH + "/batch");
    assertEquals(
        "A batch is read as text/csv, application/x-ndjson, application/json.",
        Refusal.of(response, 415).detail());
  }

  @Test
  void anOptionThatABatchDoesNotHaveIsRefused() {
    for (String option : List.of("format=csv", "workings=true", "field=verdict")) {
      Response response =
          given().contentType("application/x-ndjson").body(GOOD).post(PATH + "/batch?" + option);
      Refusal.of(response, 422);
    }
  }

  @Test
  void aFieldGivenTwiceIsRefused() {
    List<JsonNode> answers =
        lines(GOOD.replace("\"rated_ohm\":8", "\"rated_ohm\":8,\"rated_ohm\":4"));
    assertTrue(answers.get(0).has("status"), answers::toString);
  }
}
