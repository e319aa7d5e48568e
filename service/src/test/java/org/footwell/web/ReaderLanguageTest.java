package org.footwell.web;

import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.HEADER;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.footwell.web.SoundLevelCalls.ROW;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.ArrayList;
import java.util.List;
import org.footwell.recording.WavBytes;
import org.footwell.recording.WavBytes.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Every sentence of an answer is in the language of its reader: shown with one made up here. */
@ExtendWith(RunningServer.class)
class ReaderLanguageTest {

  private static RequestSpecification reading(String languages) {
    return RunningServer.given().header("Accept-Language", languages);
  }

  private static Response post(String body) {
    return reading("qaa, en;q=0.5").contentType("application/json").body(body).post(PATH);
  }

  private static List<String> details(Response refused) {
    JsonNode problem = Example.read(refused.asString());
    List<String> details = new ArrayList<>(List.of(problem.path("detail").asText()));
    problem.path("errors").forEach(error -> details.add(error.path("detail").asText()));
    return details;
  }

  private static String with(String power) {
    return SoundLevelCalls.with("power_w", power);
  }

  @Test
  void findingsAreInTheReadersLanguage() {
    for (Response answer :
        List.of(
            post(GOOD),
            reading("qaa").get(PATH + "?" + QUERY),
            reading("QAA-x, fr;q=0.9").get(PATH + "?" + QUERY))) {
      assertTrue(answer.asString().contains("\"~unheard\""), answer::asString);
      assertEquals("qaa", answer.header("Content-Language"));
      assertTrue(answer.headers().getValues("Vary").contains("Accept-Language"));
    }
  }

  @Test
  void faultsOfFormAndOfBoundsAreToo() {
    assertEquals(
        List.of("~power_w: ~num 0.000001~50000", "~power_w: ~num 0.000001~50000"),
        details(post(with("-1"))));
    Response both = post(with("\"3,2\"").replace(",\"rated_ohm\":8", ""));
    assertEquals(
        List.of(
            "~2: ~power_w! ~num 0.000001~50000~point",
            "~power_w! ~num 0.000001~50000~point",
            "~driver.rated_ohm~"),
        details(both));
    assertEquals("qaa", both.header("Content-Language"));
    assertEquals(
        "~num 0.000001~50000~point",
        Example.read(both.asString()).at("/errors/0/allowed").asText());
  }

  @Test
  void soAreThoseOfAnAddress() {
    assertEquals("~twice power_w", details(get("&power_w=1")).get(0));
    assertEquals("~power? ~near power_w", details(get("&power=1")).get(0));
    assertEquals("~workings: ~one true, false", details(get("&workings=perhaps")).get(0));
    assertEquals("~fild? ~near field", details(reading("qaa").post(PATH + "?fild=1")).get(0));
    assertEquals("~verdikt? ~near verdict", details(get("&field=verdikt")).get(0));
  }

  private static Response get(String more) {
    return reading("qaa").get(PATH + "?" + QUERY + more);
  }

  @Test
  void soAreThoseOfABatch() {
    String table = HEADER + "\n" + ROW + "\n" + ROW.replace("10", "-1") + "\n";
    String answer = batch("text/csv", table, "").asString();
    assertTrue(answer.contains("~3: ~power_w: ~num 0.000001~50000"), answer);
    String header = details(batch("text/csv", HEADER.replace("power_w", "power_v"), "")).get(0);
    assertEquals("~power_v? ~near power_w", header);
    String lines = batch("application/x-ndjson", with("-1"), "").asString();
    assertTrue(lines.contains("\"~power_w: ~num 0.000001~50000\""), lines);
    String array = batch("application/json", "[" + with("-1") + "," + GOOD + "]", "").asString();
    assertTrue(array.contains("\"~power_w: ~num 0.000001~50000\""), array);
    assertTrue(array.contains("\"~unheard\""), array);
    assertEquals(
        "~separator: ~text/csv",
        details(batch("application/json", "[]", "?separator=comma")).get(0));
  }

  private static Response batch(String type, String body, String query) {
    return reading("qaa").contentType(type).body(body).post(PATH + "/batch" + query);
  }

  @Test
  void soAreThoseOfFiles() {
    Response refused =
        reading("qaa")
            .multiPart("request", "{}", "application/json")
            .multiPart("one", "one.wav", WavBytes.of(Kind.INT16, 44_100, new float[8]), "audio/wav")
            .post("/v1/arrival-times");
    assertEquals("~unused one", details(refused).get(0));
  }

  @Test
  void whoReadsNoneOfTheLanguagesIsAnsweredInTheFirst() {
    Response answer = reading("fr").get(PATH + "?" + QUERY + "&power_w=1");
    assertEquals("power_w is used more than once.", details(answer).get(0));
    assertEquals("en", answer.header("Content-Language"));
    assertEquals("Accept-Language", answer.header("Vary"));
  }
}
