package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.HEADER;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.ROW;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** In what form a batch may come and be asked for. */
@ExtendWith(RunningServer.class)
class BatchFormTest {

  private static final String CSV = HEADER + "\n" + ROW + "\n";
  private static final String BATCH = PATH + "/batch";

  @Test
  void lettersInAnotherEncodingAreNotRead() {
    Refusal refusal =
        Refusal.of(given().contentType("text/csv; charset=iso-8859-1").body(CSV).post(BATCH), 415);
    assertEquals("Send the body in UTF-8, not in iso-8859-1.", refusal.detail());
  }

  @Test
  void aCallerThatTakesAnotherFormIsToldSo() {
    Refusal refusal =
        Refusal.of(
            given().contentType("text/csv").accept("application/json").body(CSV).post(BATCH), 406);
    assertEquals("Accept allows none of text/csv.", refusal.detail());
    for (String accept : Set.of("*/*", "text/*", "text/csv", "application/json, text/csv;q=0.5")) {
      assertEquals(
          200, given().contentType("text/csv").accept(accept).body(CSV).post(BATCH).statusCode());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"columns=level_db_spl", "separator=comma"})
  void whatOnlyCsvHasIsRefusedElsewhere(String option) {
    Refusal refusal =
        Refusal.of(
            given()
                .contentType("application/x-ndjson")
                .body(GOOD + "\n")
                .post(BATCH + "?" + option),
            422);
    String name = option.substring(0, option.indexOf('='));
    assertEquals(name + " must be given only with text/csv.", refusal.detail());
  }

  /** A caller that sends all before it reads, far more than all buffers on the way can hold. */
  @ParameterizedTest
  @ValueSource(strings = {"text/csv", "application/json"})
  void aLongBodyThatIsRefusedAtItsBeginningIsReadUntilTheCallerListens(String type)
      throws IOException {
    String row = ROW + "\n";
    int rows = 12_000_000 / row.length();
    String header = "driver.ratd_ohm," + HEADER + "\n";
    try (RawConnection connection = new RawConnection()) {
      connection.send(
          "POST %s HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: %s\r\n"
                  .formatted(BATCH, type)
              + "Content-Length: %d\r\n\r\n".formatted(header.length() + rows * row.length())
              + header);
      for (int i = 0; i < rows; i += 1000) {
        connection.send(row.repeat(Math.min(1000, rows - i)));
      }
      String answer = connection.readAll();
      assertTrue(answer.startsWith("HTTP/1.1 4"), answer);
      assertTrue(answer.contains("application/problem+json"), answer);
    }
  }
}
