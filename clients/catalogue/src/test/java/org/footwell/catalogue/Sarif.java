package org.footwell.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.footwell.Committed;

/** SARIF as a reader sees it: it must keep to the published schema. */
record Sarif(JsonNode run) {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Path SCHEMA =
      Committed.PROJECT.resolve(
          "clients/catalogue/node_modules/@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json");

  static Sarif read(Path file) throws IOException {
    JsonNode log = MAPPER.readTree(file.toFile());
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4)
            .getSchema(MAPPER.readTree(Files.readString(SCHEMA)));
    assertEquals(List.of(), List.copyOf(schema.validate(log)));
    JsonNode run = log.at("/runs/0");
    for (JsonNode result : run.get("results")) {
      assertEquals(
          result.get("ruleId"),
          run.at("/tool/driver/rules").get(result.get("ruleIndex").intValue()).get("id"));
    }
    return new Sarif(run);
  }

  JsonNode results() {
    return run.get("results");
  }

  /** Codes by part, of results at a level. */
  Map<String, Set<String>> codes(String... levels) {
    Map<String, Set<String>> codes = new TreeMap<>();
    for (JsonNode result : results()) {
      if (List.of(levels).contains(result.get("level").asText())) {
        codes
            .computeIfAbsent(part(result), part -> new TreeSet<>())
            .add(result.get("ruleId").asText());
      }
    }
    return codes;
  }

  /** Lines by part. */
  Map<String, Long> lines() {
    Map<String, Long> lines = new TreeMap<>();
    for (JsonNode result : results()) {
      lines.put(
          part(result), result.at("/locations/0/physicalLocation/region/startLine").longValue());
    }
    return lines;
  }

  static String part(JsonNode result) {
    return result.at("/locations/0/logicalLocations/0/name").asText();
  }

  /** Messages in order. */
  List<String> messages() {
    List<String> messages = new ArrayList<>();
    results().forEach(result -> messages.add(result.at("/message/text").asText()));
    return messages;
  }
}
