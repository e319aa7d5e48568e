package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.HEADER;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.footwell.web.SoundLevelCalls.ROW;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What keeps browsers and spreadsheets from running what a caller wrote. */
@ExtendWith(RunningServer.class)
class SafeguardsTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/openapi.json",
        "/metrics",
        "/health/ready",
        "/nothing",
        PATH + "?" + QUERY,
        PATH
      })
  void noBrowserGuessesTheTypeOfAnAnswerOrLoadsWhatItNames(String path) {
    Response answer = given().get(path);
    assertEquals("nosniff", answer.header("X-Content-Type-Options"));
    assertTrue(answer.header("Content-Security-Policy").startsWith("default-src 'none'; "));
  }

  @Test
  void norOfAnAnswerThatNoRouteGave() {
    String answer = RawConnection.answer("GET / HTTP/1.1\r\nno header\r\n\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 400 "), answer);
    assertTrue(answer.contains("X-Content-Type-Options: nosniff\r\n"), answer);
    assertTrue(answer.contains("Content-Security-Policy: default-src 'none'; "), answer);
  }

  @Test
  void aPageLoadsFromTheServiceOnlyAndRunsNoScriptWithinIt() {
    List<String> policy =
        List.of(given().get("/").header("Content-Security-Policy").split("; ", -1));
    assertTrue(policy.contains("default-src 'none'"), policy::toString);
    assertTrue(policy.contains("script-src 'self'"), policy::toString);
  }

  @Test
  void aBatchInCsvPassesNoFormulaThrough() {
    String body =
        HEADER
            + ",note,\"=HYPERLINK(\"\"http://x\"\")\"\n"
            + ROW
            + ",=1+1,@a\n"
            + ROW
            + ",\"+a,b\",-5\n"
            + "=cmd,one_watt,8,1,a,b\n";
    Table table =
        Table.of(given().contentType("text/csv").body(body).post(PATH + "/batch").asString());
    assertEquals(List.of("'=1+1", "'+a,b", "a"), table.column("note"));
    assertEquals(List.of("'@a", "-5", "b"), table.column("'=HYPERLINK(\"http://x\")"));
    assertEquals("'=cmd", table.column("driver.sensitivity.level_db_spl").get(2));
  }

  @Test
  void whatWasMadeHarmlessStaysSoWhenItIsSentAgain() {
    String body = HEADER + ",note\n" + ROW + ",'=1+1\n";
    Response again = given().contentType("text/csv").body(body).post(PATH + "/batch");
    assertEquals(List.of("'=1+1"), Table.of(again.asString()).column("note"));
  }

  @Test
  void aSingleAnswerInCsvHoldsNoFormula() {
    Response answer =
        given()
            .contentType("application/json")
            .body("{\"part_id\":\"=1+1\",\"rated_ohm\":4,\"re_ohm\":3.4}")
            .post("/v1/driver-check?format=csv");
    assertEquals(List.of("'=1+1"), Table.of(answer.asString()).column("part"));
  }
}
