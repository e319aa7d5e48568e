package org.footwell.web;

import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.hamcrest.Matchers.containsString;

import io.restassured.response.ValidatableResponse;
import java.nio.charset.Charset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** JSON comes in UTF-8: bytes of other encodings, or of none at all, get an answer that says so. */
@ExtendWith(RunningServer.class)
class OtherLettersTest {

  /** Not even JSON's own rules for telling encodings apart know these. */
  private static final byte[] OF_NO_ENCODING = {0, 0, '{', 0, 1, 2, 3, 4};

  private static ValidatableResponse post(String below, String type, byte[] body) {
    return RunningServer.given()
        .contentType(type)
        .body(body)
        .post(SoundLevelCalls.PATH + below)
        .then();
  }

  private static List<byte[]> others() {
    return List.of(
        OF_NO_ENCODING,
        SoundLevelCalls.GOOD.getBytes(UTF_16LE),
        SoundLevelCalls.GOOD.getBytes(UTF_16BE),
        SoundLevelCalls.GOOD.getBytes(Charset.forName("UTF-32")));
  }

  @Test
  void aRequestOfOtherLettersIsMalformed() {
    for (byte[] other : others()) {
      post("", "application/json", other).statusCode(400).body(containsString("not well-formed"));
    }
  }

  @Test
  void aBatchOfOtherLettersIsNoArray() {
    for (byte[] other : others()) {
      post("/batch", "application/json", other).statusCode(400);
    }
  }

  @Test
  void aLineOfOtherLettersHasAProblemOfItsOwn() {
    post("/batch", "application/x-ndjson", OF_NO_ENCODING)
        .statusCode(200)
        .body(containsString("not well-formed"));
  }

  @Test
  void theMarkOfUtf8IsPassedOver() {
    byte[] marked = ("\uFEFF" + SoundLevelCalls.GOOD).getBytes(UTF_8);
    post("", "application/json", marked).statusCode(200);
    post("/batch", "application/x-ndjson", marked)
        .statusCode(200)
        .body(containsString("\"verdict\""));
    post("/batch", "application/json", ("\uFEFF[" + SoundLevelCalls.GOOD + "]").getBytes(UTF_8))
        .statusCode(200)
        .body(containsString("\"verdict\""));
  }
}
