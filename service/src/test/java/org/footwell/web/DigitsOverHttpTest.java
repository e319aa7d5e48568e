package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.HEADER;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.Response;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers with fewer digits are those in full, rounded. */
@ExtendWith(RunningServer.class)
class DigitsOverHttpTest {

  private static final ObjectMapper EXACT =
      new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

  private static final MathContext FIVE = new MathContext(5, RoundingMode.HALF_UP);

  /** What goes into a device: a section of a filter. */
  private static final Set<String> OF_SECTION = Set.of("b0", "b1", "b2", "a1", "a2");

  /** Names of money. */
  private static final String MONEY = "(.*(price|labour|total|tax).*|cost)";

  private static final String LEVEL = "level_db_spl";

  /** A request whose level has many digits: 90 + 10 log10(7) = 98.45098040014257. */
  private static final String SEVEN = SoundLevelCalls.with("power_w", "7");

  private static final String QUERY_OF_SEVEN = QUERY.replace("power_w=10", "power_w=7");

  private static JsonNode exact(Response response) {
    try {
      return EXACT.readTree(response.asString());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void everyAnswerIsTheOneInFullRounded(Example example) {
    JsonNode full = exact(example.post("?workings=true"));
    Response fewer = example.post("?workings=true&digits=5");
    assertEquals(200, fewer.statusCode(), fewer::asString);
    for (String part : List.of("result", "findings", "workings")) {
      boolean device = part.equals("result");
      assertRounded(part, full.get(part), exact(fewer).get(part), device);
    }
  }

  /** Coefficients are copied into a device from the result; steps only show them. */
  private static void assertRounded(String name, JsonNode full, JsonNode fewer, boolean device) {
    assertEquals(full.getNodeType(), fewer.getNodeType(), name);
    assertEquals(full.size(), fewer.size(), name);
    if (full.isObject()) {
      full.properties()
          .forEach(
              entry ->
                  assertRounded(
                      entry.getKey(), entry.getValue(), fewer.get(entry.getKey()), device));
    } else if (full.isArray()) {
      for (int i = 0; i < full.size(); i++) {
        assertRounded(name, full.get(i), fewer.get(i), device);
      }
    } else if (full.isBigDecimal()
        && !(device && OF_SECTION.contains(name))
        && !name.matches(MONEY)) {
      BigDecimal rounded = full.decimalValue().round(FIVE);
      assertEquals(
          0, rounded.compareTo(fewer.decimalValue()), () -> name + " " + full + " " + fewer);
    } else {
      assertEquals(full.asText(), fewer.asText(), name);
    }
  }

  @Test
  void coefficientsOfFiltersAndMoneyStay() {
    Example filters =
        Example.all().filter(e -> e.id().equals("crossover-filters")).findFirst().orElseThrow();
    String full = filters.post("").asString();
    String fewer = filters.post("?digits=4").asString();
    JsonNode one = Example.read(full).findParent("b0");
    assertTrue(one.get("a1").asText().length() > 10, one::toString);
    assertEquals(one, Example.read(fewer).findParent("b0"));
    String plan = given().get("/plan/examples/camper-van.json").asString();
    Response review =
        given().contentType("application/json").body(plan).post("/v1/plan-review?digits=4");
    assertTrue(review.asString().contains("1600.00"), review::asString);
  }

  @ParameterizedTest
  @CsvSource({"4, 98.45", "5, 98.451", "8, 98.45098", "9, 98.4509804", "17, 98.45098040014257"})
  void theFormatsOfNumbersAgree(int digits, String level) {
    String option = "&digits=" + digits;
    String address = PATH + "?" + QUERY_OF_SEVEN + option;
    assertTrue(given().get(address).asString().contains("\"" + LEVEL + "\":" + level + ","));
    assertEquals(level, given().get(address + "&field=" + LEVEL).asString());
    assertEquals(
        level, Table.of(given().get(address + "&format=csv").asString()).row(0).get(LEVEL));
    String element = "<" + LEVEL + ">" + level + "</" + LEVEL + ">";
    assertTrue(given().get(address + "&format=xml").asString().contains(element));

    String batch = PATH + "/batch?digits=" + digits;
    String csv = HEADER + "\n90,one_watt,8,7\n";
    Table table = Table.of(given().contentType("text/csv").body(csv).post(batch).asString());
    assertEquals(level, table.row(0).get(LEVEL));
    assertEquals("90", table.row(0).get("driver.sensitivity.level_db_spl"));
    String inJson = "\"" + LEVEL + "\":" + level + ",";
    String lines =
        given().contentType("application/x-ndjson").body(SEVEN + "\n").post(batch).asString();
    assertTrue(lines.contains(inJson), lines);
    String array =
        given().contentType("application/json").body("[" + SEVEN + "]").post(batch).asString();
    assertTrue(array.contains(inJson), array);

    String sweep =
        "{\"request\":"
            + GOOD
            + ",\"inputs\":[{\"path\":\"power_w\",\"values\":[7]}],\"outputs\":[\""
            + LEVEL
            + "\"]}";
    for (String format : List.of("csv", "json", "ndjson")) {
      String rows =
          given()
              .contentType("application/json")
              .body(sweep)
              .post(PATH + "/sweep?format=" + format + option)
              .asString();
      assertTrue(rows.matches("(?s).*[,:]" + level.replace(".", "\\.") + "[,}].*"), rows);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"3", "18", "x", "", "6.0", "-6", "06", "1e1"})
  void anotherCountIsRefusedWithWhateverElseIsWrong(String count) {
    Refusal refusal = Refusal.of(given().get(PATH + "?digits=" + count + "&workings=perhaps"), 422);
    assertEquals(Set.of("/digits not-allowed", "/workings not-allowed"), refusal.faults());
    assertEquals("digits must be from 4 to 17.", refusal.detailAt("/digits"));
    for (String path : List.of("/batch?", "/sweep?")) {
      Refusal ofTable =
          Refusal.of(
              given()
                  .contentType("application/json")
                  .body("[]")
                  .post(PATH + path + "lang=xx&digits=" + count),
              422);
      assertEquals(Set.of("/digits not-allowed", "/lang not-allowed"), ofTable.faults());
    }
  }

  @Test
  void aPageForPeopleRoundsInItsOwnWay() {
    Refusal refusal = Refusal.of(given().get(PATH + "?" + QUERY + "&format=text&digits=6"), 422);
    assertEquals(
        "digits must be given only with application/json, text/csv, application/xml.",
        refusal.detail());
  }
}
