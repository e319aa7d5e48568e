package org.footwell.openapi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** Each rule of .spectral.yaml can fail: a rule whose path matches nothing would pass for ever. */
class HouseRulesIT {

  @Test
  void everyRuleOfTheHouseFindsItsBreak() throws Exception {
    assertEquals(Set.of(), difference(rules(), found()), "rules that found nothing");
  }

  private static Set<String> rules() throws IOException {
    Set<String> names = new TreeSet<>();
    JsonNode rules = new YAMLMapper().readTree(Path.of(".spectral.yaml").toFile()).get("rules");
    for (Map.Entry<String, JsonNode> rule : rules.properties()) {
      if (!rule.getValue().asText().equals("off")) {
        names.add(rule.getKey());
      }
    }
    return names;
  }

  private static Set<String> found() throws IOException, InterruptedException {
    Path report = Path.of("target", "house-rules.json");
    Process spectral =
        new ProcessBuilder(
                "node_modules/.bin/spectral",
                "lint",
                "src/test/resources/every-house-rule-broken.yaml",
                "--format=json",
                "--quiet",
                "--output=" + report)
            .inheritIO()
            .start();
    try {
      assertTrue(spectral.waitFor(60, TimeUnit.SECONDS), "the linter does not end");
    } finally {
      spectral.destroy();
    }
    Set<String> codes = new TreeSet<>();
    new JsonMapper().readTree(report.toFile()).forEach(one -> codes.add(one.get("code").asText()));
    return codes;
  }

  private static Set<String> difference(Set<String> all, Set<String> without) {
    Set<String> rest = new TreeSet<>(all);
    rest.removeAll(without);
    return rest;
  }
}
