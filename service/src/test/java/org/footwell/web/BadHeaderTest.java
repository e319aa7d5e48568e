package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Methods and headers that cannot be answered. */
@ExtendWith(RunningServer.class)
class BadHeaderTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "text/plain",
        "text/xml",
        "application/xml",
        "application/jsonx",
        "multipart/form-data",
        "application/x-www-form-urlencoded",
        "application/octet-stream",
        "application"
      })
  void anotherContentTypeIsNotRead(String type) {
    Response response =
        given()
            .config(
                RestAssuredConfig.config()
                    .encoderConfig(
                        EncoderConfig.encoderConfig()
                            .encodeContentTypeAs(type, ContentType.TEXT)
                            .appendDefaultContentCharsetToContentTypeIfUndefined(false)))
            .contentType(type)
            .body(GOOD)
            .post(PATH);
    assertEquals(
        "Send JSON with the header Content-Type: application/json, not " + type + ".",
        Refusal.of(response, 415).detail());
  }

  @Test
  void aBodyWithoutAContentTypeIsNotRead() {
    String answer =
        RawConnection.answer(
            "POST "
                + PATH
                + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                + "Content-Length: "
                + GOOD.length()
                + "\r\n\r\n"
                + GOOD);
    assertEquals(
        "Send JSON with the header Content-Type: application/json.",
        Refusal.of(RawConnection.body(answer), 415).detail());
  }

  @Test
  void aContentTypeWithCapitalsAndParametersIsRead() {
    Response response =
        given().contentType("Application/JSON; charset=UTF-8").body(GOOD).post(PATH);
    assertEquals(200, response.statusCode());
  }

  @ParameterizedTest
  @ValueSource(strings = {"PUT", "PATCH", "DELETE"})
  void aWrongMethodIsToldWithThoseAllowed(String method) {
    Response response = given().request(method, PATH);
    assertEquals(
        method + " is not allowed here; use GET, HEAD, POST, OPTIONS.",
        Refusal.of(response, 405).detail());
    assertEquals("GET, HEAD, POST, OPTIONS", response.header("Allow"));
  }

  @Test
  void aFixedPageTakesNoPost() {
    Response response = given().post("/health/live");
    Refusal.of(response, 405);
    assertEquals("GET, HEAD, OPTIONS", response.header("Allow"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"image/png", "text/html", "application/json;q=0", "*/*;q=0", "nonsense"})
  void anAcceptHeaderThatAllowsNothingIsNotAcceptable(String accept) {
    Refusal.of(given().header("Accept", accept).get(PATH + "?" + QUERY), 406);
    Refusal.of(
        given().header("Accept", accept).contentType("application/json").body(GOOD).post(PATH),
        406);
  }

  /** A wait of a fifth of a second after each refusal was felt only by the next on a connection. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Content-Type: text/plain\r\n",
        "Content-Type: application/json\r\nAccept: image/png\r\n"
      })
  void refusalsOnOneConnectionFollowEachOtherAtOnce(String headers) throws IOException {
    String start = "POST " + PATH + " HTTP/1.1\r\nHost: localhost\r\n" + headers;
    String stated = "Content-Length: " + GOOD.length() + "\r\n\r\n" + GOOD;
    String chunk = Integer.toHexString(GOOD.length()) + "\r\n" + GOOD + "\r\n0\r\n\r\n";
    try (RawConnection connection = new RawConnection()) {
      long begin = System.nanoTime();
      for (int i = 0; i < 20; i++) {
        connection.send(start + stated);
        connection.readUntil("}");
        connection.send(start + "Transfer-Encoding: chunked\r\n\r\n" + chunk);
        connection.readUntil("}");
      }
      long took = System.nanoTime() - begin;
      assertTrue(took < 2_000_000_000L, () -> "40 refusals took " + took / 1_000_000 + " ms");
    }
  }
}
