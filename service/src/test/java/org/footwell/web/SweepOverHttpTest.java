package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A sweep gives what single requests give, for every calculation and in every form. */
@ExtendWith(RunningServer.class)
class SweepOverHttpTest {

  private static final String PATH = "/v1/sound-level/sweep";

  private static Response post(String path, String body) {
    return given().contentType("application/json").body(body).post(path);
  }

  private static String level(String inputs, String outputs) {
    return """
        {"request": {"driver": {"rated_ohm": 8,
           "sensitivity": {"level_db_spl": 90, "basis": "one_watt"}}},
         "inputs": [%s], "outputs": [%s]}
        """
        .formatted(inputs, outputs);
  }

  /** A number of an example, three values of it, and a number of the answer that there is. */
  private static ObjectNode sweep(Example example, String input) {
    JsonNode given = example.question().at("/" + input.replace('.', '/'));
    ObjectNode sweep = JsonNodeFactory.instance.objectNode();
    sweep.set("request", example.question());
    sweep
        .putArray("inputs")
        .addObject()
        .put("path", input)
        .putArray("values")
        .add(given)
        .add(given.doubleValue() * 1.02)
        .add(-1e8);
    return sweep;
  }

  private static List<String> numbers(Example example) {
    return example.cells().keySet().stream()
        .filter(path -> example.question().at("/" + path.replace('.', '/')).isNumber())
        .filter(path -> !path.contains("samples") && !path.contains("spectra"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void sweepsANumberOfItsExampleAsSingleRequestsWould(Example example) {
    String path = example.path() + "/sweep";
    JsonNode single = example.answer();
    int swept = 0;
    List<String> numbers = numbers(example);
    for (int i = 0; i < numbers.size() && swept < 3; i++) {
      Response answer = post(path, sweep(example, numbers.get(i)).toString());
      if (answer.statusCode() == 422) {
        // Entries of a long row of numbers are no inputs.
        continue;
      }
      JsonNode rows = Example.read(answer.asString()).get("rows");
      assertEquals(3, rows.size());
      sameAs(single, rows.get(0));
      assertTrue(rows.get(2).has("problem"), rows::toString);
      assertEquals(3, rows.at("/2/problem/line").asInt());
      swept++;
    }
    assertTrue(swept > 0, "no number of the example can be swept");
  }

  /** Single figures, verdict and codes of a row are those of the single answer. */
  private static void sameAs(JsonNode single, JsonNode row) {
    row.get("outputs")
        .properties()
        .forEach(
            one ->
                assertEquals(
                    single.get("result").at("/" + one.getKey().replace('.', '/')), one.getValue()));
    assertEquals(single.get("verdict"), row.get("verdict"));
    List<String> codes = new ArrayList<>();
    single
        .get("findings")
        .forEach(
            finding -> {
              if (!codes.contains(finding.get("code").asText())) {
                codes.add(finding.get("code").asText());
              }
            });
    List<String> told = new ArrayList<>();
    row.get("findings").forEach(code -> told.add(code.asText()));
    assertEquals(codes, told);
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void takesSweepsByPostOnly(Example example) {
    String allow = "POST, OPTIONS";
    String path = example.path() + "/sweep";
    given().options(path).then().statusCode(204).header("Allow", equalTo(allow));
    given().get(path).then().statusCode(405).header("Allow", equalTo(allow));
  }

  /** Looks for the value that the example has, by the answer it gives. */
  @Tag("long")
  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void solvesForANumberOfItsExample(Example example) {
    JsonNode result = example.answer().get("result");
    List<String> outputs =
        result.properties().stream()
            .filter(one -> one.getValue().isNumber())
            .map(Map.Entry::getKey)
            .toList();
    for (String input : numbers(example).stream().limit(3).toList()) {
      double given = example.question().at("/" + input.replace('.', '/')).asDouble();
      for (String output : outputs.stream().limit(2).toList()) {
        double target = result.get(output).asDouble();
        ObjectNode asked = JsonNodeFactory.instance.objectNode();
        asked.set("request", example.question());
        asked.put("input", input).put("output", output).put("target", target);
        asked.put("from", given - Math.abs(given) / 8 - 1e-3);
        asked.put("to", given + Math.abs(given) / 7 + 1e-3);
        Response answer = post(example.path() + "/solve", asked.toString());
        if (answer.statusCode() == 422) {
          // Entries of a long row of numbers are no inputs, and some ranges are refused throughout.
          continue;
        }
        JsonNode found = Example.read(answer.asString());
        if (found.at("/result/value").isNumber() && !says(found, "output-jumps")) {
          double reached = found.at("/result/reached").asDouble();
          assertEquals(target, reached, 1e-6 * (1e-6 + Math.abs(target)), found::toString);
        } else {
          // The example stands at a corner: whole numbers that turn, parts that become alike.
          assertTrue(
              says(found, "output-jumps") || found.get("verdict").asText().equals("stop"),
              found::toString);
        }
      }
    }
  }

  private static boolean says(JsonNode answer, String code) {
    return answer.get("findings").findValuesAsText("code").contains(code);
  }

  /** P = U²/R. */
  @Test
  void ohmsLawIsSweptAsItStands() {
    JsonNode table =
        Example.read(
            post(
                    PATH,
                    level(
                        "{\"path\": \"voltage_v\", \"from\": 1, \"to\": 20, \"count\": 39}",
                        "\"driver_power_w\""))
                .asString());
    assertEquals(39, table.get("row_count").asInt());
    for (int i = 0; i < 39; i++) {
      double volts = 1 + 0.5 * i;
      JsonNode row = table.get("rows").get(i);
      assertEquals(volts, row.at("/inputs/voltage_v").asDouble());
      assertEquals(volts * volts / 8, row.at("/outputs/driver_power_w").asDouble(), 1e-12);
    }
    assertEquals("Average power of one driver, W", table.at("/outputs/0/meaning").asText());
  }

  private static final String TWO =
      level(
          """
          {"path": "power_w", "from": 1, "to": 10, "series": "e6"},
          {"path": "/distance_m", "values": [1, -2, 2]}
          """,
          "\"level_db_spl\", \"driver_power_w\"");

  @Test
  void theSecondInputRunsThroughItsValuesForEachOfTheFirst() {
    Table table = Table.of(post(PATH + "?format=csv", TWO).asString());
    assertEquals(
        List.of(
            "power_w",
            "distance_m",
            "level_db_spl",
            "driver_power_w",
            "verdict",
            "findings",
            "error"),
        table.header());
    assertEquals(
        List.of("1.0", "1.0", "1.0", "1.5", "1.5", "1.5"), table.column("power_w").subList(0, 6));
    assertEquals(
        List.of("1.0", "-2.0", "2.0", "1.0", "-2.0", "2.0"),
        table.column("distance_m").subList(0, 6));
    assertEquals(7 * 3, table.rows().size());
    assertEquals("10.0", table.row(20).get("power_w"));
  }

  @Test
  void anImpossibleRowSaysWhyAndStopsNoOther() {
    Map<String, String> row = Table.of(post(PATH + "?format=csv", TWO).asString()).row(1);
    assertEquals("line 2: distance_m must be a number from 0.05 to 100.", row.get("error"));
    assertEquals("", row.get("verdict"));
    JsonNode rows = Example.read(post(PATH, TWO).asString()).get("rows");
    assertFalse(rows.get(1).has("outputs"));
    assertEquals(
        Set.of("/distance_m not-allowed"),
        Refusal.of(rows.at("/1/problem").toString(), 422).faults());
    assertEquals(90, rows.at("/0/outputs/level_db_spl").asDouble());
  }

  @Test
  void theFormsHoldTheSameRows() {
    JsonNode rows = Example.read(post(PATH, TWO).asString()).get("rows");
    List<JsonNode> lines =
        post(PATH + "?format=ndjson", TWO).asString().lines().map(Example::read).toList();
    assertEquals(rows.size(), lines.size());
    Response accepted =
        given().contentType("application/json").accept("text/csv").body(TWO).post(PATH);
    Table table = Table.of(accepted.asString());
    Table semicolons =
        Table.of(post(PATH + "?format=csv&separator=semicolon", TWO).asString(), ';');
    assertEquals(table, semicolons);
    for (int i = 0; i < rows.size(); i++) {
      assertEquals(rows.get(i), lines.get(i));
      assertEquals(
          rows.get(i).at("/outputs/level_db_spl").asText(), table.row(i).get("level_db_spl"));
    }
  }

  @Test
  void wordsAreVariedByNames() {
    JsonNode rows =
        Example.read(
                post(
                        PATH,
                        level(
                            """
                            {"path": "driver.sensitivity.basis",
                             "names": ["one_watt", "two_point_eight_three_volt", "loud"]},
                            {"path": "power_w", "values": [1]}
                            """,
                            "\"level_db_spl\""))
                    .asString())
            .get("rows");
    assertEquals(90, rows.at("/0/outputs/level_db_spl").asDouble());
    assertEquals(
        "two_point_eight_three_volt", rows.at("/1/inputs/driver.sensitivity.basis").asText());
    assertEquals("wrong-type", rows.at("/2/problem/errors/0/code").asText());
  }

  @Test
  void aHundredThousandRowsComeInOrder() {
    String body =
        level(
            """
            {"path": "power_w", "from": 1, "to": 100, "count": 400, "spacing": "logarithmic"},
            {"path": "distance_m", "from": 0.5, "to": 25.4, "step": 0.1}
            """,
            "\"level_db_spl\"");
    List<String> rows = post(PATH + "?format=csv", body).asString().lines().toList();
    assertEquals(1 + 400 * 250, rows.size());
    assertTrue(rows.get(1).startsWith("1.0,0.5,"), rows.get(1));
    assertTrue(rows.get(2).startsWith("1.0,0.6,"), rows.get(2));
    assertTrue(rows.get(250).startsWith("1.0,25.4,"), rows.get(250));
    assertTrue(rows.get(100_000).startsWith("100.0,25.4,"), rows.get(100_000));
  }

  private static Set<String> faults(String body) {
    return Refusal.of(post(PATH, body), 422).faults();
  }

  @Test
  void everyFaultIsToldAtOnce() {
    assertEquals(
        Set.of(
            "/inputs/0/path unknown-input",
            "/inputs/1/path unknown-input",
            "/outputs/0 unknown-output",
            "/inputs too-many-points"),
        faults(
            level(
                """
                {"path": "powr_w", "from": 1, "to": 2, "count": 1000},
                {"path": "/driver/sensitivity", "from": 1, "to": 2, "count": 1000}
                """,
                "\"level\"")));
    assertEquals(
        Set.of("/inputs/0 exactly-one-of"),
        faults(level("{\"path\": \"power_w\"}", "\"level_db_spl\"")));
    assertEquals(
        Set.of(
            "/inputs/0/to not-ascending",
            "/inputs/1/from needed-beside",
            "/inputs/1/to needed-beside"),
        faults(
            level(
                """
                {"path": "power_w", "from": 5, "to": 2, "step": 1},
                {"path": "distance_m", "count": 3}
                """,
                "\"level_db_spl\"")));
    assertEquals(
        Set.of("/inputs/0/count needed-beside"),
        faults(
            level(
                "{\"path\": \"power_w\", \"from\": 1, \"to\": 2, \"step\": 1, \"spacing\": \"linear\"}",
                "\"level_db_spl\"")));
  }

  @Test
  void aMillionPointsAreRefusedWithWhatIsAllowed() {
    String body =
        level(
            "{\"path\": \"power_w\", \"from\": 1, \"to\": 2, \"count\": 1000000}",
            "\"level_db_spl\"");
    assertEquals(
        "1000000 points are asked for; at most 100000 are allowed.",
        Refusal.of(post(PATH, body), 422).detail());
  }

  @Test
  void wordsWithoutNamesSeriesWithoutValuesAndRatiosFromZeroAreRefused() {
    assertEquals(
        Set.of("/inputs/0 names-needed", "/inputs/1/series no-standard-value"),
        faults(
            level(
                """
                {"path": "driver.sensitivity.basis", "values": [1]},
                {"path": "power_w", "from": 1.1, "to": 1.4, "series": "r5"}
                """,
                "\"level_db_spl\"")));
    assertEquals(
        Set.of("/inputs/0/from not-allowed", "/inputs/1/from not-allowed"),
        faults(
            level(
                """
                {"path": "power_w", "from": 0, "to": 1, "count": 3, "spacing": "logarithmic"},
                {"path": "distance_m", "values": [1], "from": 1}
                """,
                "\"level_db_spl\"")));
  }

  @Test
  void whatNoValueMendsIsRefusedBeforeTheTable() {
    String body =
        level("{\"path\": \"distance_m\", \"values\": [1, 2]}", "\"level_db_spl\"")
            .replace("\"rated_ohm\": 8", "\"rated_ohm\": -8, \"raetd_ohm\": 8");
    assertEquals(Set.of("/request/driver/raetd_ohm unknown-field"), faults(body));
    assertEquals(
        Set.of("/request exactly-one-of", "/request/driver/rated_ohm not-allowed"),
        faults(body.replace("\"raetd_ohm\": 8,", "").replace(", \"raetd_ohm\": 8", "")));
  }
}
