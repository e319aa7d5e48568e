package org.footwell.web;

import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.HEADER;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.footwell.web.SoundLevelCalls.ROW;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.footwell.Calculations;
import org.footwell.calculation.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever reads German gets sentences in German, and the same numbers as everybody else. */
@ExtendWith(RunningServer.class)
class GermanAnswersTest {

  /** 2.83 V are 2.83² W, 8.009 W, there: 9.036 dB more than for one. */
  private static final String ONE_OHM = GOOD.replace("\"rated_ohm\":8", "\"rated_ohm\":1");

  private static RequestSpecification reading(String languages) {
    return RunningServer.given().header("Accept-Language", languages);
  }

  private static RequestSpecification sending(RequestSpecification reading, String body) {
    return reading.contentType("application/json").body(body);
  }

  private static JsonNode read(Response answer) {
    return Example.read(answer.asString());
  }

  private static String sentences(JsonNode answer) {
    return String.join("\n", answer.get("findings").findValuesAsText("text"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "de-AT", "fr;q=0.9, de-CH;q=0.5", "DE-at, en;q=0.1"})
  void whoeverPrefersGermanIsAnsweredInIt(String languages) {
    Response answer = sending(reading(languages), ONE_OHM).post(PATH);
    assertEquals("de", answer.header("Content-Language"));
    assertTrue(
        sentences(read(answer)).contains("Die angegebenen 90 dB gelten je Watt; das sind 99,04 dB"),
        answer::asString);
    assertTrue(
        read(answer).get("safety").toString().contains("Lauter Schall schädigt das Gehör"),
        answer::asString);
  }

  @Test
  void theAddressGoesBeforeTheHeader() {
    Response german = sending(reading("en"), ONE_OHM).post(PATH + "?lang=de");
    assertEquals("de", german.header("Content-Language"));
    assertFalse(german.headers().getValues("Vary").contains("Accept-Language"));
    Response english = sending(reading("de"), ONE_OHM).post(PATH + "?lang=en");
    assertEquals("en", english.header("Content-Language"));
    assertTrue(sentences(read(english)).contains("that is 99.04 dB at 2.83 V"), english::asString);
  }

  @Test
  void englishIsForEverybodyElse() {
    for (String languages : List.of("fr", "*", "en-GB, de;q=0.5", "not a language;;")) {
      Response answer = sending(reading(languages), ONE_OHM).post(PATH);
      assertEquals("en", answer.header("Content-Language"));
      assertTrue(answer.headers().getValues("Vary").contains("Accept-Language"));
      assertTrue(sentences(read(answer)).contains("that is 99.04 dB"), answer::asString);
    }
  }

  @Test
  void numbersAreTheSameInEveryLanguage() {
    Response german = sending(reading("de"), ONE_OHM).post(PATH);
    Response english = sending(reading("en"), ONE_OHM).post(PATH);
    assertEquals(read(english).get("result"), read(german).get("result"));
    assertEquals(
        read(english).get("findings").findValues("value"),
        read(german).get("findings").findValues("value"));
    for (String query : List.of("&format=csv", "&field=level_db_spl", "&field=verdict")) {
      assertEquals(
          RunningServer.given().get(PATH + "?" + QUERY + "&lang=en" + query).asString(),
          RunningServer.given().get(PATH + "?" + QUERY + "&lang=de" + query).asString(),
          query);
    }
  }

  @Test
  void aSentenceHasAMinusSignAndItsNumberNone() throws Exception {
    CodeRequest clipping =
        CodeRequest.all()
            .filter(one -> one.toString().equals("gain-chain tone-clips"))
            .findFirst()
            .orElseThrow();
    for (String language : List.of("en", "de")) {
      Response answer =
          sending(RunningServer.given(), clipping.request().toString())
              .post("/v1/gain-chain?lang=" + language);
      JsonNode finding =
          read(answer).get("findings").findParents("code").stream()
              .filter(one -> one.get("code").asText().equals("tone-clips"))
              .findFirst()
              .orElseThrow();
      assertTrue(finding.get("limit").asDouble() < 0, finding::toString);
      assertTrue(finding.get("text").asText().contains("\u2212"), finding::toString);
      assertFalse(finding.get("text").asText().contains(" -"), finding::toString);
    }
  }

  @Test
  void faultsAndProblemsAreInGermanToo() {
    JsonNode invalid =
        read(sending(reading("de"), SoundLevelCalls.with("power_w", "-1")).post(PATH));
    assertEquals(
        "Die Anfrage ist lesbar, aber nicht zu beantworten", invalid.get("title").asText());
    assertEquals(
        "power_w: erlaubt ist eine Zahl von 0.000001 bis 50000.", invalid.get("detail").asText());
    assertEquals("-1.0", invalid.at("/errors/0/given").asText(), "as it was written");
    JsonNode unreadable = read(sending(reading("de"), "{").post(PATH));
    assertEquals(
        "Der Inhalt endet mitten im JSON, in Spalte 2.", unreadable.get("detail").asText());
    Response nowhere = RunningServer.given().get("/v1/sound-levl?lang=de&errors=text");
    assertEquals(
        "Diese Berechnung gibt es nicht. Gemeint ist vielleicht sound-level.", nowhere.asString());
    assertTrue(
        RunningServer.given()
            .get("/problems/unreadable?lang=de")
            .asString()
            .startsWith("400 Die Anfrage ist nicht lesbar"));
  }

  @Test
  void rowsAreInGermanToo() {
    String table = HEADER + "\n" + ROW.replace("10", "-1") + "\n";
    Response csv =
        RunningServer.given().contentType("text/csv").body(table).post(PATH + "/batch?lang=de");
    assertTrue(csv.asString().contains("Zeile 2: power_w: erlaubt ist eine Zahl"), csv::asString);
    Response lines =
        RunningServer.given()
            .contentType("application/x-ndjson")
            .body(ONE_OHM)
            .post(PATH + "/batch?lang=de");
    assertTrue(lines.asString().contains("das sind 99,04 dB"), lines::asString);
    Response sweep =
        sending(
                RunningServer.given(),
                "{\"request\":" + GOOD + ",\"outputs\":[\"nothing\"],\"inputs\":[]}")
            .post(PATH + "/sweep?lang=de");
    assertEquals("de", sweep.header("Content-Language"));
    assertEquals(422, sweep.statusCode());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "/batch", "/sweep", "/tolerance"})
  void aLanguageThereAreNoTextsInIsRefusedWithThoseThereAre(String operation) {
    Response refused = sending(reading("de"), GOOD).post(PATH + operation + "?lang=tlh");
    assertEquals(422, refused.statusCode(), refused::asString);
    assertEquals("/lang", read(refused).at("/errors/0/pointer").asText());
    assertEquals("lang: erlaubt ist eines von en, de.", read(refused).get("detail").asText());
  }

  /** What an address asks for beside the request must not be taken for a field of it. */
  @Test
  void noRequestHasAFieldOfThatName() {
    Set<String> named = new TreeSet<>();
    Calculations.all().stream()
        .map(calculation -> calculation.card())
        .filter(card -> Shape.of(card.request()).has("lang"))
        .forEach(card -> named.add(card.id()));
    assertEquals(Set.of(), named);
  }
}
