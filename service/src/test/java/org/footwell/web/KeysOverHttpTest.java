package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A service that wants a key. */
class KeysOverHttpTest {

  /** The SHA-256 of {@code a-key}, by {@code printf %s a-key | sha256sum}. */
  private static final String HASH =
      "2a8a1240f50636655520ac8ed22aa29473b8517b4abfdbc3bc03bcad73fc8849";

  private static Server server;

  @BeforeAll
  static void start() {
    server = RunningServer.start(Map.of("FOOTWELL_KEYS", "shop:" + HASH));
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  private static RequestSpecification with(String authorization) {
    return given(server.port()).header("Authorization", authorization);
  }

  private static void assertRefused(Response answer, String challenge, String detail) {
    assertEquals(401, answer.statusCode());
    assertEquals(challenge, answer.header("WWW-Authenticate"));
    assertEquals("/problems/key-needed", answer.path("type"));
    assertEquals(detail, answer.path("detail"));
    assertEquals("no-store", answer.header("Cache-Control"));
  }

  @Test
  void theRightKeyLetsIn() {
    for (String authorization : List.of("Bearer a-key", "bearer a-key", "BEARER  a-key ")) {
      assertEquals(200, with(authorization).get(PATH + "?" + QUERY).statusCode(), authorization);
    }
    Response posted = with("Bearer a-key").contentType("application/json").body(GOOD).post(PATH);
    assertEquals(200, posted.statusCode());
  }

  /** A cache on the way may keep what is public: then for nobody who has not the same key. */
  @Test
  void whatIsKeptIsKeptForTheKey() {
    Response answer = with("Bearer a-key").get(PATH + "?" + QUERY);
    assertTrue(answer.headers().getValues("Vary").contains("Authorization"));
  }

  @Test
  void withoutAKeyTheAnswerSaysHowToSendOne() {
    for (String path : List.of(PATH + "?" + QUERY, "/v1/nothing", "/v1/", PATH + "/nothing")) {
      assertRefused(
          given(server.port()).get(path),
          "Bearer realm=\"footwell\"",
          "This service wants a key, with the header Authorization: Bearer and the key.");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Basic c2hvcDphLWtleQ==",
        "Bearer",
        "Bearer a-key a-key",
        "a-key",
        "Bearer \u00e9"
      })
  void whatIsNoKeyOfThisSchemeCountsAsNone(String authorization) {
    assertEquals(
        "Bearer realm=\"footwell\"",
        with(authorization).get(PATH + "?" + QUERY).header("WWW-Authenticate"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a-kez", "A-KEY", "a-key=", "a-ke", HASH, "shop"})
  void aWrongKeyIsToldSo(String key) {
    assertRefused(
        with("Bearer " + key).get(PATH + "?" + QUERY),
        "Bearer realm=\"footwell\", error=\"invalid_token\"",
        "The key is not known here.");
  }

  @Test
  void everyMethodAndEveryOperationWantsOne() {
    for (String path :
        List.of(PATH, PATH + "/batch", PATH + "/sweep", PATH + "/of-plan", PATH + "/tolerance")) {
      assertEquals(
          401,
          given(server.port()).contentType("application/json").body("{}").post(path).statusCode(),
          path);
      assertEquals(401, given(server.port()).head(path).statusCode(), path);
      assertEquals(401, given(server.port()).delete(path).statusCode(), path);
    }
  }

  /** No other way to write an address leads past the key. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "/%761/sound-level",
        "/v1%2Fsound-level",
        "//v1/sound-level",
        "/v1//sound-level",
        "/V1/sound-level",
        "/x/../v1/sound-level",
        "/./v1/sound-level",
        "/v1;x=y/sound-level",
        "/%2e/v1/sound-level",
        "/v1/./sound-level",
        "/health/../v1/sound-level"
      })
  void noOtherSpellingOfTheAddressIsAnswered(String path) throws IOException {
    try (RawConnection connection = new RawConnection(server.port())) {
      connection.send(
          "GET " + path + "?" + QUERY + " HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n");
      String answer = connection.readAll();
      assertTrue(answer.matches("(?s)HTTP/1.1 (400|401|404) .*"), answer);
    }
  }

  /** Browsers and spreadsheets ask first, without a key; what they learn is what the address takes. */
  @Test
  void askingWhatAnAddressTakesNeedsNone() {
    Response answer =
        given(server.port())
            .header("Origin", "https://shop.example")
            .header("Access-Control-Request-Method", "POST")
            .header("Access-Control-Request-Headers", "authorization, content-type")
            .options(PATH);
    assertEquals(204, answer.statusCode());
    assertTrue(answer.header("Access-Control-Allow-Headers").contains("Authorization"));
  }

  @Test
  void aPageOfAnotherOriginMayReadTheRefusal() {
    Response answer = given(server.port()).header("Origin", "https://shop.example").get(PATH);
    assertEquals("*", answer.header("Access-Control-Allow-Origin"));
    assertTrue(answer.header("Access-Control-Expose-Headers").contains("WWW-Authenticate"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/codes",
        "/openapi.json",
        "/plan",
        "/health/live",
        "/health/ready",
        "/metrics",
        "/problems/key-needed"
      })
  void pagesContractAndProbesStayOpen(String path) {
    assertEquals(200, given(server.port()).get(path).statusCode());
  }

  @Test
  void aSpreadsheetThatAsksForTextReadsTheSentence() {
    Response answer = given(server.port()).get(PATH + "?" + QUERY + "&errors=text");
    assertEquals(200, answer.statusCode());
    assertEquals(
        "This service wants a key, with the header Authorization: Bearer and the key.",
        answer.asString());
  }

  @Test
  void aRefusalIsInTheLanguageOfItsReader() {
    String detail = given(server.port()).header("Accept-Language", "de").get(PATH).path("detail");
    assertEquals(
        "Dieser Dienst verlangt einen Schlüssel, im Kopf Authorization: Bearer und der Schlüssel.",
        detail);
  }

  @Test
  void keysMayStandInAFile(@TempDir Path directory) throws IOException {
    Path file = directory.resolve("keys");
    Files.writeString(file, "# the shop\nshop:" + HASH + "\n");
    try (Server other = RunningServer.start(Map.of("FOOTWELL_KEY_FILE", file.toString()))) {
      assertEquals(401, given(other.port()).get(PATH + "?" + QUERY).statusCode());
      assertEquals(
          200,
          given(other.port())
              .header("Authorization", "Bearer a-key")
              .get(PATH + "?" + QUERY)
              .statusCode());
    }
  }

  @Test
  void aServiceWithoutKeysTakesAnyAndNone() {
    try (Server open = RunningServer.start(Map.of())) {
      Response answer =
          given(open.port()).header("Authorization", "Bearer anything").get(PATH + "?" + QUERY);
      assertEquals(200, answer.statusCode());
      assertFalse(answer.headers().getValues("Vary").contains("Authorization"));
      assertNull(answer.header("RateLimit"));
    }
  }
}
