package org.footwell.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;

/** The contract is the same in YAML as in JSON. */
class YamlTextTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  @Test
  void listsOfValuesAndSingleValuesStandInBrackets() throws IOException {
    JsonNode json =
        JSON.readTree(
            """
            {"tags": ["a", "b"], "schema": {"$ref": "#/x"}, "none": {}, "200": "on",
             "both": {"low": 1e-7, "high": 20.0}, "all": [{"n": 1}], "lines": "a\\nb\\n"}
            """);
    assertEquals(
        """
        tags: [a, b]
        schema: {$ref: '#/x'}
        none: {}
        '200': 'on'
        both:
          low: 1.0E-7
          high: 20.0
        all:
        - {n: 1}
        lines: |
          a
          b
        """,
        YamlText.of(json));
  }

  @Test
  void theContractIsTheSameInYamlAsInJson() throws IOException {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(1 << 24);
    for (String version : new String[] {"3.0", "3.1"}) {
      try (InputStream yaml = contract(version + ".yaml");
          InputStream json = contract(version + ".json")) {
        JsonNode read = JSON.readTree(JSON.writeValueAsString(new Yaml(options).load(yaml)));
        assertEquals(JSON.readTree(json), read, version);
      }
    }
  }

  private static InputStream contract(String file) {
    return YamlTextTest.class.getResourceAsStream("/contract/openapi-" + file);
  }
}
