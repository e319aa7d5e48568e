package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.post;
import static org.footwell.web.SoundLevelCalls.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Bodies that are too large, too deep or too long are refused early and cheaply. */
@ExtendWith(RunningServer.class)
class BigInputTest {

  private static final int MEBIBYTE = 1 << 20;

  @AfterEach
  void theServiceStillAnswers() {
    assertEquals(200, post(GOOD).statusCode());
  }

  @Test
  void aTextOfAMegabyteIsUnreadable() {
    String text = "\"" + "x".repeat(1_000_000) + "\"";
    Refusal refusal = Refusal.of(post(with("drive", text)), 400);
    assertEquals(
        "The body has a text, number or nesting beyond the limits of the contract.",
        refusal.detail());
  }

  @Test
  void aLongTextIsShortenedWhereItIsToldAgain() {
    String text = "\"" + "x".repeat(90_000) + "\"";
    Refusal refusal = Refusal.of(post(with("drive", text)), 422);
    assertEquals(Set.of("/drive wrong-type"), refusal.faults());
    assertTrue(refusal.problem().toString().length() < 1_000);
  }

  @Test
  void ofVeryManyFaultsAHundredAreToldAndThatThereAreMore() {
    String band = "{\"frequency_hz\": -1, \"level_db\": 999}";
    String bands = "[" + String.join(",", Collections.nCopies(64, band)) + "]";
    Refusal refusal = Refusal.of(post(with("spectrum", bands)), 422);
    assertEquals(100, refusal.problem().get("errors").size());
    assertTrue(refusal.detail().startsWith("At least 100 faults; "), refusal.detail());
  }

  @Test
  void aLongNameIsShortenedWhereItIsToldAgain() {
    Refusal refusal = Refusal.of(post(with("x".repeat(40_000), "1")), 422);
    assertTrue(refusal.problem().toString().length() < 2_000);
  }

  @Test
  void nestingOfAThousandLevelsIsUnreadable() {
    Refusal.of(post(with("drive", "[".repeat(1_000) + "]".repeat(1_000))), 400);
    Refusal.of(post("{\"cabin\":".repeat(1_000) + "1" + "}".repeat(1_000)), 400);
  }

  @Test
  void nestingBelowTheLimitIsJustOfTheWrongType() {
    Refusal refusal = Refusal.of(post(with("drive", "[".repeat(30) + "]".repeat(30))), 422);
    assertEquals(Set.of("/drive wrong-type"), refusal.faults());
  }

  @Test
  void tenThousandEntriesAreToldAsOneFault() {
    String entries = "{\"frequency_hz\":100,\"level_db\":80},".repeat(9_999);
    String list = "[" + entries + "{\"frequency_hz\":100,\"level_db\":80}]";
    Refusal refusal = Refusal.of(post(with("spectrum", list)), 422);
    assertEquals(Set.of("/spectrum not-allowed"), refusal.faults());
    assertEquals("10000 entries", refusal.problem().at("/errors/0/given").asText());
  }

  @Test
  void tenThousandFaultyEntriesAreToldAsOneFault() {
    String list = "[" + "5,".repeat(9_999) + "5]";
    Refusal refusal = Refusal.of(post(with("spectrum", list)), 422);
    assertEquals(Set.of("/spectrum not-allowed"), refusal.faults());
  }

  @Test
  void aNumberOfManyDigitsIsOutOfBoundsOrUnreadable() {
    Refusal.of(post(with("power_w", "9".repeat(90))), 422);
    Refusal.of(post(with("power_w", "9".repeat(5_000))), 400);
  }

  @Test
  void aBodyOfExactlyTheLimitIsRead() {
    String body = GOOD + " ".repeat(MEBIBYTE - GOOD.length());
    assertEquals(200, post(body).statusCode());
  }

  @Test
  void aBodyStatedLargerThanTheLimitIsRefusedBeforeItIsSent() {
    String answer =
        RawConnection.answer(
            "POST "
                + PATH
                + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                + "Content-Length: "
                + (MEBIBYTE + 1)
                + "\r\nConnection: close\r\n\r\n{");
    assertTrue(answer.startsWith("HTTP/1.1 413 "), answer);
    assertEquals(
        "The body is larger than 1048576 bytes.",
        Refusal.of(RawConnection.body(answer), 413).detail());
  }

  @Test
  void aBodyOfUnstatedLengthIsRefusedWhenItPassesTheLimit() {
    String chunk = " ".repeat(MEBIBYTE / 16);
    String chunked = (Integer.toHexString(chunk.length()) + "\r\n" + chunk + "\r\n").repeat(16);
    String answer =
        RawConnection.answer(
            "POST "
                + PATH
                + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                + "Transfer-Encoding: chunked\r\nConnection: close\r\n\r\n"
                + chunked
                + "1\r\n \r\n");
    assertTrue(answer.startsWith("HTTP/1.1 413 "), answer);
    Refusal.of(RawConnection.body(answer), 413);
  }

  @Test
  void aByteThatIsNotUtf8IsUnreadable() {
    byte[] body = with("drive", "\"?\"").getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < body.length; i++) {
      body[i] = body[i] == '?' ? (byte) 0xFF : body[i];
    }
    Refusal.of(given().contentType("application/json").body(body).post(PATH), 400);
  }
}
