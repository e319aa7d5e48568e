package org.footwell.catalogue.report;

import static org.footwell.catalogue.report.Rows.STOP;
import static org.footwell.catalogue.report.Rows.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SarifReportTest {

  @TempDir private Path folder;

  @Test
  void onlyAPartNumberMakesAFindingKnownAgain() throws IOException {
    Path file = folder.resolve("report.sarif");
    Rows.write(new SarifReport(file, "drivers.csv", "1"), row(2, "A", STOP), row(3, null, STOP));
    JsonNode results = new ObjectMapper().readTree(file.toFile()).at("/runs/0/results");
    assertEquals(
        "A|qts-impossible|qts",
        results.get(0).at("/partialFingerprints/partRuleField~1v1").asText());
    assertFalse(results.get(1).has("partialFingerprints"));
    assertEquals("line 3: " + STOP.text(), results.get(1).at("/message/text").asText());
  }
}
