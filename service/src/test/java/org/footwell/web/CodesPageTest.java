package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.footwell.Calculations;
import org.footwell.CodesTest;
import org.footwell.calculation.Caution;
import org.footwell.calculation.text.Coded;
import org.footwell.calculation.text.Words;
import org.footwell.contract.PublishedCode;
import org.footwell.web.request.Trees;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The list of all codes is what the cards declare, and no code is missing from it. */
@ExtendWith(RunningServer.class)
@Tag("long")
class CodesPageTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  private static JsonNode published() throws IOException {
    return JSON.readTree(given().get("/codes.json").asString());
  }

  @Test
  void theListIsWhatTheCardsDeclare() throws IOException {
    JsonNode declared =
        Trees.MAPPER.valueToTree(Map.of("codes", PublishedCode.all(Calculations.all())));
    assertEquals(declared, published());
  }

  @Test
  void everyCodeOfAFindingOrARefusalIsOnSomeCard() throws IOException {
    Set<String> listed =
        StreamSupport.stream(published().get("codes").spliterator(), false)
            .map(one -> one.get("code").asText())
            .collect(Collectors.toSet());
    Set<String> missing =
        CodesTest.allCodes().stream()
            .filter(code -> !(code instanceof Words) && !(code instanceof Caution))
            .map(Coded::code)
            .filter(code -> !listed.contains(code))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), missing);
  }

  @Test
  void aSentenceIsPublishedWithItsArgumentsAndItsAdvice() throws IOException {
    for (JsonNode one : published().get("codes")) {
      if (one.get("code").asText().equals("port-air-too-fast")) {
        assertEquals("warning", one.get("level").asText());
        assertTrue(one.get("text").asText().startsWith("Air in the port reaches {value} m/s"));
        assertTrue(one.get("advice").asText().startsWith("Give the ports {area} cm²"));
        assertEquals("number", one.get("arguments").get("area").asText());
        assertTrue(one.get("calculations").toString().contains("\"vented-box\""), one::toString);
        return;
      }
    }
    throw new AssertionError("port-air-too-fast is not listed");
  }

  @Test
  void thePageShowsEveryCodeWithItsSentence() throws IOException {
    String page = given().get("/codes").asString();
    for (JsonNode one : published().get("codes")) {
      String text = one.get("text").asText().replace("&", "&amp;").replace("<", "&lt;");
      assertTrue(page.contains("<code>" + one.get("code").asText() + "</code>"), one::toString);
      assertTrue(page.contains(text.replace(">", "&gt;")), one::toString);
    }
    assertTrue(given().get("/").asString().contains("href=\"/codes\""));
  }
}
