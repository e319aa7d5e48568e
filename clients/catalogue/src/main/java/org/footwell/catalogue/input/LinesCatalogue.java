package org.footwell.catalogue.input;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.footwell.catalogue.row.Row;

/** A catalogue with one JSON object a line. */
final class LinesCatalogue implements Catalogue {

  private final InputStream in;
  private final Lines lines;
  private final Mapping mapping;
  private final ObjectMapper mapper;
  private final Fields fields;
  private final RowJson json;

  /** Nothing of a line is passed over in silence. */
  private final ObjectReader strict;

  LinesCatalogue(InputStream in, Mapping mapping, ObjectMapper mapper, Fields fields) {
    this.in = in;
    this.lines = new Lines(in, Chunk.LARGEST_ROW);
    this.mapping = mapping;
    this.mapper = mapper;
    this.fields = fields;
    this.json = new RowJson(fields);
    this.strict =
        mapper
            .reader()
            .with(
                DeserializationFeature.FAIL_ON_TRAILING_TOKENS,
                DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY,
                DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);
  }

  @Override
  public List<String> header() {
    return List.of();
  }

  @Override
  public Row next() throws IOException {
    if (!lines.next()) {
      return null;
    }
    if (lines.tooLong()) {
      return Row.refused(
          lines.number(),
          null,
          "too-large",
          "The line is longer than " + Chunk.LARGEST_ROW + " bytes.");
    }
    return row(lines.bytes());
  }

  private Row row(byte[] line) throws IOException {
    JsonNode tree;
    try {
      tree = strict.readTree(line);
    } catch (JsonProcessingException malformed) {
      tree = null;
    }
    if (!(tree instanceof ObjectNode request)) {
      return Row.refused(
          lines.number(), null, "unreadable", "The line is not one well-formed JSON object.");
    }
    String column = mapping.partColumn() == null ? theirPart() : mapping.partColumn();
    String part = request.path(column).isValueNode() ? request.path(column).asText() : null;
    mapping.ignored().forEach(request::remove);
    if (mapping.partColumn() != null && !fields.has(mapping.ours(column))) {
      request.remove(column);
    }
    mapping.renamed().forEach((ours, theirs) -> move(request, theirs, ours));
    mapping.constants().forEach((field, value) -> fill(request, field, value));
    return Row.of(lines.number(), part, mapper.writeValueAsString(request));
  }

  private String theirPart() {
    return mapping.renamed().getOrDefault(Mapping.PART_FIELD, Mapping.PART_FIELD);
  }

  private void move(ObjectNode request, String from, String to) {
    JsonNode value = request.remove(from);
    if (value != null && to.indexOf('.') < 0) {
      request.set(to, value);
    } else if (value != null) {
      json.put(request, to, value.asText());
    }
  }

  private void fill(ObjectNode request, String field, String value) {
    if (request.at("/" + field.replace('.', '/')).isMissingNode()) {
      json.put(request, field, value);
    }
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
