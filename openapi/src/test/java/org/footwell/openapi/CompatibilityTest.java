package org.footwell.openapi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A caller of the released contract is a caller of this one, and every check of that can fail. */
class CompatibilityTest {

  private static final Path CONTRACT = Path.of("footwell-v1.yaml");
  private static final Path BASELINE = Path.of("baseline-v1.yaml");

  private static final String GET = "/v1/level get";
  private static final String POST = "/v1/level post";
  private static final String SENT = POST + " > application/json";
  private static final String ANSWERED = GET + " < 200 application/json";

  private static final String SMALL =
      """
      openapi: 3.0.3
      info: {title: small, version: '1'}
      paths:
        /v1/level:
          get:
            operationId: level-get
            parameters:
            - {name: power_w, in: query, required: true, schema: {type: number, maximum: 10}}
            - {name: drive, in: query, schema: {type: string, enum: [each, shared]}}
            - {name: further, in: query, explode: true, schema: {type: object}}
            responses: {'200': {$ref: '#/components/responses/Level'}}
          post:
            operationId: level
            requestBody:
              content:
                application/json: {schema: {$ref: '#/components/schemas/Question'}}
                text/csv: {schema: {type: string}}
            responses:
              '200': {$ref: '#/components/responses/Level'}
              '422': {description: bad, content: {application/problem+json: {}}}
      components:
        responses:
          Level:
            description: good
            headers: {ETag: {schema: {type: string}}}
            content: {application/json: {schema: {$ref: '#/components/schemas/Answer'}}}
        schemas:
          Question:
            type: object
            required: [power_w]
            properties:
              power_w: {type: number, minimum: 1, maximum: 100}
              distance_m: {type: number, minimum: 0.5, default: 1}
              area_m2: {type: number}
              name: {type: string}
              note: {type: string, nullable: true}
              driver_count: {type: integer}
              basis: {type: string, enum: [one_watt, voltage]}
              bands: {type: array, items: {$ref: '#/components/schemas/Band'}}
              cabin: {$ref: '#/components/schemas/Cabin'}
              gains: {type: object, additionalProperties: {type: number}}
              mixed: {allOf: [{$ref: '#/components/schemas/Cabin'}]}
              within: {$ref: '#/components/schemas/Question'}
          Band: {type: object, properties: {frequency_hz: {type: number}}}
          Cabin: {type: object, properties: {length_m: {type: number}}}
          Other: {type: object, properties: {length_m: {type: string}}}
          Answer:
            type: object
            required: [level_db]
            properties:
              level_db: {type: number}
              peak_db: {type: number}
              verdict: {type: string, enum: [ok, stop]}
      """;

  private static List<String> breaks(String from, String to) throws IOException {
    assertTrue(SMALL.contains(from), from);
    return Compatibility.breaks(promises(SMALL), promises(SMALL.replace(from, to)));
  }

  private static SortedMap<String, ObjectNode> promises(String contract) throws IOException {
    return Promises.of(new YAMLMapper().readTree(contract));
  }

  @ParameterizedTest(name = "{0} -> {1}")
  @MethodSource({"operations", "requests", "answers"})
  void tellsOfABreak(String from, String to, String expected) throws IOException {
    List<String> found = breaks(from, to);
    assertTrue(found.contains(expected), () -> expected + " is not in " + found);
  }

  static Stream<Arguments> operations() {
    return Stream.of(
        arguments("/v1/level:", "/v1/loudness:", POST + ": removed"),
        arguments("operationId: level-get", "operationId: query", GET + ": operationId changed"),
        arguments("text/csv: {", "text/plain: {", POST + " > text/csv: removed"),
        arguments("'200': {$ref", "'201': {$ref", GET + " < 200: removed"),
        arguments(
            "'422': {description: bad", "4XX: {description: 400 bad", POST + " < 422: removed"),
        arguments(
            "problem+json: {}", "json: {}", POST + " < 422 application/problem+json: removed"),
        arguments("ETag: {", "Digest: {", GET + " < 200 header ETag: removed"),
        arguments("name: power_w, in", "name: watts, in", GET + " ?power_w: removed"),
        arguments("name: power_w, in", "name: watts, in", GET + " ?watts: now required"),
        arguments(
            "name: power_w, in: query", "name: power_w, in: header", GET + " ?power_w: in changed"),
        arguments("drive, in", "drive, required: true, in", GET + " ?drive: now required"),
        arguments("explode: true", "explode: false", GET + " ?further: explode changed"),
        arguments(
            "requestBody:", "requestBody:\n        required: true", POST + " >: now required"));
  }

  static Stream<Arguments> requests() {
    return Stream.of(
        arguments("m: 10}", "m: 9}", GET + " ?power_w: maximum lowered"),
        arguments("  cabin: {", "  cab: {", SENT + " cabin: removed"),
        arguments("frequency_hz:", "at_hz:", SENT + " bands.*.frequency_hz: removed"),
        arguments(
            "required: [power_w]",
            "required: [power_w]\n      additionalProperties: false",
            SENT + ": unknown fields now refused"),
        arguments("[power_w]", "[power_w, name]", SENT + " name: now required"),
        arguments("[power_w]", "[power_w, area_cm2]", SENT + " area_cm2: now required"),
        arguments("minimum: 1,", "minimum: 2,", SENT + " power_w: minimum raised"),
        arguments("minimum: 0.5", "minimum: 1", SENT + " distance_m: minimum raised"),
        arguments(
            "minimum: 1,",
            "minimum: 1, exclusiveMinimum: true,",
            SENT + " power_w: minimum raised"),
        arguments("maximum: 100", "maximum: 99", SENT + " power_w: maximum lowered"),
        arguments(
            "maximum: 100",
            "maximum: 100, exclusiveMaximum: true",
            SENT + " power_w: maximum lowered"),
        arguments("integer}", "integer, minimum: 0}", SENT + " driver_count: minimum raised"),
        arguments("integer}", "integer, maximum: 9}", SENT + " driver_count: maximum lowered"),
        arguments("default: 1", "default: 2", SENT + " distance_m: default changed"),
        arguments("[one_watt, voltage]", "[voltage]", SENT + " basis: fewer values"),
        arguments(
            "name: {type: string}",
            "name: {type: string, enum: [a]}",
            SENT + " name: fewer values"),
        arguments(
            "name: {type: string}",
            "name: {type: string, minLength: 1}",
            SENT + " name: must be longer"),
        arguments(
            "name: {type: string}",
            "name: {type: string, maxLength: 9}",
            SENT + " name: must be shorter"),
        arguments(
            "name: {type: string}",
            "name: {type: string, pattern: a}",
            SENT + " name: pattern changed"),
        arguments(
            "type: array", "type: array, minItems: 1", SENT + " bands: must have more entries"),
        arguments(
            "type: array", "type: array, maxItems: 9", SENT + " bands: must have fewer entries"),
        arguments(", nullable: true", "", SENT + " note: no longer nullable"),
        arguments(
            "power_w: {type: number", "power_w: {type: integer", SENT + " power_w: type changed"),
        arguments(
            "Properties: {type: number}",
            "Properties: {type: string}",
            SENT + " gains.{name}: type changed"),
        arguments(
            "cabin: {$ref: '#/components/schemas/Cabin'}",
            "cabin: {$ref: '#/components/schemas/Other'}",
            SENT + " cabin.length_m: type changed"),
        arguments(
            "allOf: [{$ref: '#/components/schemas/Cabin'}]",
            "allOf: [{$ref: '#/components/schemas/Other'}]",
            SENT + " mixed.length_m: type changed"),
        arguments(
            "type: array", "type: array, uniqueItems: true", SENT + " bands: entries must differ"),
        arguments("area_m2: {", "area_m2: {format: double, ", SENT + " area_m2: format changed"),
        arguments(
            "{$ref: '#/components/schemas/Question'}\n  ",
            "{type: object}\n  ",
            SENT + " within: within changed"));
  }

  static Stream<Arguments> answers() {
    return Stream.of(
        arguments("peak_db: {", "crest_db: {", ANSWERED + " peak_db: removed"),
        arguments("[level_db]", "[peak_db]", ANSWERED + " level_db: may be absent"),
        arguments(
            "peak_db: {type: number",
            "peak_db: {type: string",
            ANSWERED + " peak_db: type changed"),
        arguments("peak_db: {", "peak_db: {nullable: true, ", ANSWERED + " peak_db: now nullable"),
        arguments("[ok, stop]", "[ok, stop, worse]", ANSWERED + " verdict: further values"),
        arguments(", enum: [ok, stop]", "", ANSWERED + " verdict: further values"));
  }

  @ParameterizedTest(name = "{0} -> {1}")
  @MethodSource
  void letsBe(String from, String to) throws IOException {
    assertEquals(List.of(), breaks(from, to));
  }

  static Stream<Arguments> letsBe() {
    return Stream.of(
        arguments("/v1/level:", "/v1/level:"),
        arguments("'422': {description: bad", "4XX: {description: 422 bad"),
        arguments("  /v1/level:", "  /v1/delay: {}\n  /v1/level:"),
        arguments(
            "- {name: drive",
            "- {name: format, in: query, schema: {type: string}}\n      - {name: drive"),
        arguments("  name: {", "  label: {type: string}\n        name: {"),
        arguments("minimum: 1,", "minimum: 0.5,"),
        arguments("maximum: 100", "maximum: 100.0"),
        arguments("maximum: 100", "maximum: 101"),
        arguments("[one_watt, voltage]", "[one_watt, voltage, current]"),
        arguments("{length_m: {type: number}}", "{length_m: {type: number, nullable: true}}"),
        arguments("  verdict:", "  crest_db: {type: number}\n        verdict:"),
        arguments("[level_db]", "[level_db, peak_db]"),
        arguments("[ok, stop]", "[ok]"),
        arguments("description: good", "description: better"));
  }

  @Test
  void namesOfSchemasArePromisedToNobody() throws IOException {
    String renamed = SMALL.replace("/Cabin'", "/Interior'").replace(" Cabin:", " Interior:");
    assertEquals(promises(SMALL), promises(renamed));
  }

  @Test
  void choicesOfSchemasAreRefused() {
    String choice = SMALL.replace("allOf: [", "oneOf: [");
    assertThrows(IllegalArgumentException.class, () -> promises(choice));
  }

  @Test
  void aBaselineReadsAsItWasWritten() throws IOException {
    SortedMap<String, ObjectNode> promises = promises(SMALL);
    String text = Baseline.write(promises);
    assertEquals(promises, Baseline.read(text));
    assertTrue(text.contains(POST + " < 200: {as: \"" + GET + " < 200\"}"), text);
  }

  @Test
  void thisContractBreaksNoCallerOfTheReleasedOne() throws IOException {
    SortedMap<String, ObjectNode> now = promises(Files.readString(CONTRACT));
    if (Boolean.getBoolean("footwell.release")) {
      Files.writeString(BASELINE, Baseline.write(now));
    }
    assertEquals(now, Baseline.read(Baseline.write(now)));
    SortedMap<String, ObjectNode> released = Baseline.read(Files.readString(BASELINE));
    assertEquals(List.of(), Compatibility.breaks(released, now));
  }

  @Test
  void theChangeLogTellsOfThisVersion() throws IOException {
    JsonNode contract = new YAMLMapper().readTree(CONTRACT.toFile());
    String heading = "\n## " + contract.at("/info/version").asText();
    assertTrue(Files.readString(Path.of("CHANGELOG.md")).contains(heading), heading);
  }
}
