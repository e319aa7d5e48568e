package org.footwell.catalogue.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Level;
import org.footwell.catalogue.row.Remark;

/** SARIF 2.1.0: one result for each finding, at its line of the catalogue. */
public final class SarifReport implements Report {

  private record Rule(int index, Level level) {}

  private final ReportFile file;
  private final JsonGenerator json;
  private final String uri;
  private final String version;
  private final Map<String, Rule> rules = new LinkedHashMap<>();

  /**
   * Begins the report.
   *
   * @param version of this program
   */
  public SarifReport(Path file, String catalogue, String version) throws IOException {
    this.file = new ReportFile(file);
    this.uri = uri(catalogue);
    this.version = version;
    this.json = new JsonFactory().createGenerator(this.file.out());
    json.writeStartObject();
    json.writeStringField("$schema", "https://json.schemastore.org/sarif-2.1.0.json");
    json.writeStringField("version", "2.1.0");
    json.writeArrayFieldStart("runs");
    json.writeStartObject();
    json.writeArrayFieldStart("results");
  }

  /** Relative where the catalogue was named so, which readers take from the root of the project. */
  private static String uri(String catalogue) {
    Path path = Path.of(catalogue);
    try {
      return path.isAbsolute()
          ? path.toUri().toString()
          : new URI(null, null, path.normalize().toString().replace('\\', '/'), null)
              .toASCIIString();
    } catch (URISyntaxException impossible) {
      throw new IllegalArgumentException(impossible);
    }
  }

  @Override
  public void add(CheckedRow row) throws IOException {
    for (Remark remark : row.remarks()) {
      Rule rule =
          rules.computeIfAbsent(remark.code(), code -> new Rule(rules.size(), remark.level()));
      json.writeRaw('\n');
      json.writeStartObject();
      json.writeStringField("ruleId", remark.code());
      json.writeNumberField("ruleIndex", rule.index());
      json.writeStringField("level", level(remark.level()));
      text("message", row.name() + ": " + remark.text());
      location(row);
      if (row.part() != null) {
        fingerprint(Baseline.key(row, remark).replace('\t', '|'));
      }
      json.writeEndObject();
    }
  }

  private void fingerprint(String key) throws IOException {
    json.writeObjectFieldStart("partialFingerprints");
    json.writeStringField("partRuleField/v1", key);
    json.writeEndObject();
  }

  private void location(CheckedRow row) throws IOException {
    json.writeArrayFieldStart("locations");
    json.writeStartObject();
    json.writeObjectFieldStart("physicalLocation");
    json.writeObjectFieldStart("artifactLocation");
    json.writeStringField("uri", uri);
    json.writeEndObject();
    json.writeObjectFieldStart("region");
    json.writeNumberField("startLine", row.line());
    json.writeEndObject();
    json.writeEndObject();
    json.writeArrayFieldStart("logicalLocations");
    json.writeStartObject();
    json.writeStringField("name", row.name());
    json.writeEndObject();
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndArray();
  }

  private void text(String field, String text) throws IOException {
    json.writeObjectFieldStart(field);
    json.writeStringField("text", text);
    json.writeEndObject();
  }

  private static String level(Level level) {
    return switch (level) {
      case STOP -> "error";
      case WARNING -> "warning";
      case NOTE -> "note";
      case OK -> "none";
    };
  }

  /** The rules come last: only now is it known which there are. */
  @Override
  public void finish(Tally tally) throws IOException {
    json.writeEndArray();
    json.writeObjectFieldStart("tool");
    json.writeObjectFieldStart("driver");
    json.writeStringField("name", "footwell-catalogue");
    json.writeStringField("version", version);
    json.writeArrayFieldStart("rules");
    for (Map.Entry<String, Rule> rule : rules.entrySet()) {
      json.writeStartObject();
      json.writeStringField("id", rule.getKey());
      text("shortDescription", RuleTexts.of(rule.getKey()));
      text("help", RuleTexts.of(rule.getKey()) + ". See the method page of driver-check.");
      json.writeObjectFieldStart("defaultConfiguration");
      json.writeStringField("level", level(rule.getValue().level()));
      json.writeEndObject();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndObject();
    json.writeStringField("columnKind", "utf16CodeUnits");
    json.close();
    file.complete();
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
