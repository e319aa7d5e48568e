package org.footwell.catalogue.input;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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

  static Catalogue csv(String text, char separator, Mapping mapping) throws IOException, CannotRun {
    return csv(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8, separator, mapping);
  }

  static Catalogue csv(byte[] bytes, Charset charset) throws IOException, CannotRun {
    return csv(bytes, charset, ',', AS_IT_IS);
  }

  private static Catalogue csv(byte[] bytes, Charset charset, char separator, Mapping mapping)
      throws IOException, CannotRun {
    return new CsvCatalogue(
        new ByteArrayInputStream(bytes), separator, charset, mapping, MAPPER, FIELDS);
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
    return rows(csv(text, ',', AS_IT_IS));
  }

  static JsonNode json(String text) throws IOException {
    return MAPPER.readTree(text);
  }

  static JsonNode sent(Row row) throws IOException {
    return json(row.json());
  }
}
