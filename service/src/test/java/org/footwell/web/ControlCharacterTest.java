package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts of a caller that no page can show, in every form an answer can have. */
@ExtendWith(RunningServer.class)
class ControlCharacterTest {

  private static Response answer(String escaped, String query) {
    return given()
        .contentType("application/json")
        .body("{\"part_id\":\"a" + escaped + "b\",\"rated_ohm\":4,\"re_ohm\":3.4}")
        .post("/v1/driver-check" + query);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\\u0000", "\\u0001", "\\u001b", "\\u009f", "\\uffff", "\\ud800"})
  void oneIsReplacedWhereItCannotStand(String escaped) {
    Response xml = answer(escaped, "?format=xml");
    assertEquals(200, xml.statusCode(), xml::asString);
    // Parsing fails on what is no XML.
    assertEquals("note", xml.xmlPath().getString("answer.verdict"));
    for (String query : new String[] {"?format=text", "?field=part", "?format=xml"}) {
      Response shown = answer(escaped, query);
      assertEquals(200, shown.statusCode(), shown::asString);
      assertTrue(shown.asString().contains("a\uFFFDb"), () -> query + ": " + shown.asString());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"\\n", "\\r\\n", "\\t", "\\u0085", "\\u2028"})
  void aLineEndBecomesASpaceInWhatIsOneLine(String escaped) {
    assertTrue(answer(escaped, "?format=text").asString().contains("  a b\n"));
    assertEquals("a b", answer(escaped, "?field=part").asString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"\\u0001", "\\n", "\\ud83d\\ude90"})
  void inJsonItStaysAsItWasGiven(String escaped) {
    String whole = answer(escaped, "").asString();
    assertEquals(
        Example.read("\"a" + escaped + "b\""), Example.read(whole).at("/result/part"), whole);
    assertFalse(whole.contains("\uFFFD"));
  }
}
