package org.footwell.web;

import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Findings for programs: by their codes, with what fills their sentences. */
@ExtendWith(RunningServer.class)
class FindingsByCodeTest {

  private static final String CODES = "findings=codes";

  /** What a finding says in fields of its own. */
  private static final Set<String> OWN_FIELDS = Set.of("value", "limit", "field");

  private static JsonNode get(String query) {
    return Example.read(RunningServer.given().get(SoundLevelCalls.PATH + "?" + query).asString());
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void nothingButTheSentencesIsMissing(Example example) {
    ObjectNode inSentences = (ObjectNode) example.answer();
    ObjectNode byCode = (ObjectNode) Example.read(example.post("?" + CODES).asString());
    JsonNode coded = byCode.remove("findings");
    JsonNode told = inSentences.remove("findings");
    assertEquals(inSentences, byCode);
    assertEquals(told.size(), coded.size());
    for (int i = 0; i < told.size(); i++) {
      ObjectNode finding = (ObjectNode) coded.get(i);
      assertEquals("", finding.get("text").asText());
      fills(example.id(), finding);
      finding.remove("arguments");
      finding.set("text", told.get(i).get("text"));
      assertFalse(finding.has("advice"));
      ((ObjectNode) told.get(i)).remove("advice");
      assertEquals(told.get(i), finding);
    }
  }

  /** All that the published sentence leaves open is there. */
  private static void fills(String calculation, JsonNode finding) {
    published(calculation, finding.get("code").asText())
        .path("arguments")
        .fieldNames()
        .forEachRemaining(
            name ->
                assertTrue(
                    OWN_FIELDS.contains(name) || finding.path("arguments").has(name),
                    () -> name + " of " + finding));
  }

  private static JsonNode published(String calculation, String code) {
    for (JsonNode one :
        Example.read(RunningServer.given().get("/codes.json").asString()).get("codes")) {
      if (one.get("code").asText().equals(code)
          && one.get("calculations").toString().contains('"' + calculation + '"')) {
        return one;
      }
    }
    throw new AssertionError(code + " of " + calculation + " is not published");
  }

  /** 100 dBA is 15 dB above the level for eight hours, five times 3 dB: a quarter of an hour. */
  @Test
  void ourWordsComeByTheirCodesAndNumbersUnrounded() {
    String asked = QUERY + "&a_weighting_db=0&";
    String expected =
        """
        [{"level": "warning", "code": "exposure-limited", "text": "", "pointer": "", "value": 100.0,
          "limit": 85.0, "arguments": {"time": {"words": "minutes", "arguments": {"time": 15.0}}}}]
        """;
    assertEquals(Example.read(expected), get(asked + CODES).get("findings"));
    assertEquals(Example.read(expected), get(asked + CODES + "&lang=de").get("findings"));
    assertEquals(get(asked), get(asked + "findings=sentences"));
  }

  @Test
  void aFormForPeopleHasSentences() {
    for (String form : List.of("text", "csv", "xml")) {
      Response refused = ask("&format=" + form);
      assertEquals(422, refused.statusCode());
      assertEquals("/findings", Example.read(refused.asString()).at("/errors/0/pointer").asText());
    }
    assertEquals("exposure-limited", ask("&field=findings.0.code").asString());
  }

  private static Response ask(String more) {
    return RunningServer.given()
        .get(SoundLevelCalls.PATH + "?" + QUERY + "&a_weighting_db=0&" + CODES + more);
  }
}
