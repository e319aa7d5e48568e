package org.footwell.web;

import static org.footwell.web.SoundLevelCalls.HEADER;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.ROW;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Title and detail of a problem are in the language of their reader: shown with one made up. */
@ExtendWith(RunningServer.class)
class ProblemLanguageTest {

  private static RequestSpecification reading() {
    return RunningServer.given().header("Accept-Language", "qaa, en;q=0.5");
  }

  private static RequestSpecification sending(String type, String body) {
    return reading().contentType(type).body(body);
  }

  private static String detail(Response refused) {
    return Example.read(refused.asString()).path("detail").asText();
  }

  @Test
  void bothAreInTheReadersLanguage() {
    Response refused = sending("application/json", "\n{").post(PATH);
    assertEquals("~unreadable", refused.jsonPath().getString("title"));
    assertEquals("~early ~2 ~2", detail(refused));
    assertEquals(400, refused.statusCode());
    assertEquals("qaa", refused.header("Content-Language"));
    assertTrue(refused.headers().getValues("Vary").contains("Accept-Language"));
  }

  @Test
  void soIsTheSentenceInACell() {
    assertEquals(
        "~early ~2", sending("application/json", "{").post(PATH + "?errors=text").asString());
    assertEquals("~none ~near sound-level", reading().get("/v1/sound-levl?errors=text").asString());
  }

  @Test
  void soAreTheRowsOfABatch() {
    assertEquals("~early ~2", detail(sending("application/x-ndjson", "{").post(PATH + "/batch")));
    Response array = sending("application/json", "[{},{").post(PATH + "/batch");
    assertEquals("~array ~one: ~early ~6", array.jsonPath().getString("[1].detail"));
    Response unknown = sending("text/plain", "").post(PATH + "/batch");
    assertEquals("~types text/csv, application/x-ndjson, application/json", detail(unknown));
  }

  @Test
  void soIsWhatIsWrongWithATable() {
    assertEquals("~header 1: ~quote", detail(table("\"a\n")));
    assertEquals(
        "~3: ~quote", errorCell(table(HEADER + "\n" + ROW + "\n\"a\n")), "a quote left open");
    assertEquals("~2: ~one of 4", errorCell(table(HEADER + "\n1\n")), "cells left out");
  }

  private static Response table(String csv) {
    return sending("text/csv", csv).post(PATH + "/batch");
  }

  private static String errorCell(Response answer) {
    String csv = answer.asString().strip();
    return csv.substring(csv.lastIndexOf(',') + 1);
  }

  @Test
  void soAreProblemsWithoutACalculation() {
    Response nowhere = reading().get("/nowhere");
    assertEquals("~nothing", detail(nowhere));
    assertEquals("Accept-Language", nowhere.header("Vary"));
    assertEquals("~PUT: GET, HEAD, OPTIONS", detail(reading().put("/openapi.json")));
    assertEquals("~FOO: GET, HEAD, POST, OPTIONS", detail(reading().request("FOO", PATH)));
    assertEquals(
        "400 ~unreadable\n~unreadable do\n", reading().get("/problems/unreadable").asString());
  }

  /** Where its headers could be read: of a broken address nobody knows who reads the answer. */
  @Test
  void soIsOneBeforeAnyRoute() throws IOException {
    try (RawConnection connection = new RawConnection(RunningServer.port())) {
      connection.send(
          String.join(
              "\r\n",
              "POST " + PATH + " HTTP/1.1",
              "Host: a",
              "Accept-Language: qaa",
              "Expect: cake",
              "Connection: close",
              "",
              ""));
      String answer = connection.readAll();
      assertTrue(answer.contains("\"detail\":\"~expect\""), answer);
      assertTrue(answer.contains("Content-Language: qaa"), answer);
    }
  }

  @Test
  void soAreThoseOfUploads() {
    Response text = sending("text/plain", "x").post("/v1/arrival-times");
    assertEquals("~send json or files~not text/plain", detail(text));
    Response part = reading().multiPart("other", "1", "application/json").post("/v1/arrival-times");
    assertEquals("~no part request", detail(part));
  }
}
