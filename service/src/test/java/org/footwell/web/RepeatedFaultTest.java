package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.HEADER;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A batch that repeats one fault a great many times. */
@ExtendWith(RunningServer.class)
class RepeatedFaultTest {

  /** As the contract says. */
  private static final int IN_FULL = 1_000;

  private static final int ROWS = IN_FULL + 300;

  private static String answer(String type, String body) {
    return given().contentType(type).body(body).post(PATH + "/batch").asString();
  }

  @Test
  void linesAfterTheFirstThousandOfAKindAreToldInShortAndInOrder() {
    String body =
        with("distance_m", "-1") + "\n" + "1\n".repeat(ROWS) + GOOD + "\n" + "1\n" + "{}\n";
    List<JsonNode> answers =
        answer("application/x-ndjson", body).lines().map(Example::read).toList();
    assertEquals(ROWS + 4, answers.size());
    for (int i = 1; i <= ROWS; i++) {
      JsonNode problem = answers.get(i);
      assertEquals(i + 1, problem.get("line").asInt());
      assertEquals(i <= IN_FULL, problem.has("errors"), problem::toString);
    }
    assertEquals(
        "Faults of the same kind as in line 2.",
        Refusal.of(answers.get(ROWS).toString(), 422).detail());
    assertEquals(100, answers.get(ROWS + 1).at("/result/level_db_spl").asDouble());
    assertFalse(answers.get(ROWS + 2).has("errors"));
    assertTrue(answers.get(ROWS + 3).has("errors"), "another kind");
  }

  @Test
  void entriesOfAnArrayLikewise() {
    JsonNode answers = Example.read(answer("application/json", "[" + "1,".repeat(ROWS) + "1]"));
    assertEquals(ROWS + 1, answers.size());
    assertTrue(answers.get(IN_FULL - 1).has("errors"));
    assertEquals(
        "Faults of the same kind as in line 1.", answers.get(IN_FULL).get("detail").asText());
  }

  @Test
  void rowsOfCsvLikewise() {
    StringBuilder body = new StringBuilder(HEADER + "\n");
    IntStream.range(0, ROWS)
        .forEach(i -> body.append(String.format(Locale.ROOT, "90,one_watt,8,ten %d%n", i)));
    List<String> errors = Table.of(answer("text/csv", body.toString())).column("error");
    assertEquals(
        "line 1001: power_w must be a number from 0.000001 to 50000.", errors.get(IN_FULL - 1));
    assertEquals("line 1002: Faults of the same kind as in line 2.", errors.get(IN_FULL));
  }

  @Test
  void aShortBodyIsNoLongerMadeAHugeAnswer() {
    int rows = 50_000;
    int bytes = answer("application/x-ndjson", "1\n".repeat(rows)).length();
    int inFull = IN_FULL * 300;
    assertTrue(bytes < inFull + rows * 160, bytes + " bytes");
  }
}
