package org.footwell.catalogue.input;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Row;
import org.footwell.client.ApiClient;
import org.footwell.client.model.DriverCheckRequest;

/** Catalogues written in a test. */
final class Reading {

  static final ObjectMapper MAPPER = new ApiClient().getObjectMapper();
  static final Fields FIELDS = new Fields(MAPPER, DriverCheckRequest.class);
  static final Mapping AS_IT_IS = new Mapping(null, Map.of(), Set.of(), Map.of());

  private Reading() {}

  static final CsvManner COMMAS = manner(Separator.COMMA, Decimal.POINT);

  static CsvManner manner(Separator separator, Decimal decimal) {
    return new CsvManner(separator, StandardCharsets.UTF_8, decimal);
  }

  static Catalogue csv(String text, CsvManner manner, Mapping mapping)
      throws IOException, CannotRun {
    return csv(text.getBytes(StandardCharsets.UTF_8), manner, mapping);
  }

  static Catalogue csv(byte[] bytes, Charset charset) throws IOException, CannotRun {
    return csv(bytes, new CsvManner(Separator.COMMA, charset, Decimal.POINT), AS_IT_IS);
  }

  private static Catalogue csv(byte[] bytes, CsvManner manner, Mapping mapping)
      throws IOException, CannotRun {
    return new CsvCatalogue(new ByteArrayInputStream(bytes), manner, mapping, MAPPER, FIELDS);
  }

  static Catalogue lines(String text, Mapping mapping) {
    return new LinesCatalogue(
        new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), mapping, MAPPER, FIELDS);
  }

  static List<Row> rows(Catalogue catalogue) throws IOException, CannotRun {
    List<Row> rows = new ArrayList<>();
    for (Row row = catalogue.next(); row != null; row = catalogue.next()) {
      rows.add(row);
    }
    return rows;
  }

  static List<Row> rowsOfCsv(String text) throws IOException, CannotRun {
    return rows(csv(text, COMMAS, AS_IT_IS));
  }

  static JsonNode json(String text) throws IOException {
    return MAPPER.readTree(text);
  }

  /** What is sent of a row, but for the line that stands in the place of its part number. */
  static JsonNode sent(Row row) throws IOException {
    ObjectNode sent = (ObjectNode) json(row.json());
    assertEquals(Long.toString(row.line()), sent.remove("part_id").textValue());
    return sent;
  }
}
