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
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Row;

/** A catalogue with one JSON object a line. */
final class LinesCatalogue implements Catalogue {

  private final InputStream in;
  private final Lines lines;
  private final Mapping mapping;
  private final ObjectMapper mapper;
  private final Fields fields;
  private final RowJson json;

  /** Keys that options name and no line had so far. */
  private final Set<String> notMet = new TreeSet<>();

  /** Nothing of a line is passed over in silence. */
  private final ObjectReader strict;

  LinesCatalogue(InputStream in, Mapping mapping, ObjectMapper mapper, Fields fields) {
    this.in = in;
    this.lines = new Lines(in, Chunk.LARGEST_ROW);
    this.mapping = mapping;
    this.mapper = mapper;
    this.fields = fields;
    this.json = new RowJson(fields);
    notMet.addAll(mapping.renamed().values());
    if (mapping.partColumn() != null) {
      notMet.add(mapping.partColumn());
    }
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
  public Row next() throws IOException, CannotRun {
    if (!lines.next()) {
      requireMet();
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

  private void requireMet() throws CannotRun {
    if (lines.number() > 0 && !notMet.isEmpty()) {
      throw new CannotRun("No line has " + String.join(" or ", notMet) + ", which options name.");
    }
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
    notMet.removeIf(request::has);
    String column = mapping.partColumn() == null ? theirPart() : mapping.partColumn();
    String part = request.path(column).isValueNode() ? request.path(column).asText() : null;
    mapping.ignored().forEach(request::remove);
    if (mapping.partColumn() != null && !fields.has(mapping.ours(column))) {
      request.remove(column);
    }
    for (Map.Entry<String, String> name : mapping.renamed().entrySet()) {
      String ours = name.getKey();
      String theirs = name.getValue();
      if (!ours.equals(theirs) && request.has(theirs) && isThere(request, ours)) {
        return Row.refused(
            lines.number(), part, "duplicate", ours + " is given twice, also as " + theirs + ".");
      }
      move(request, theirs, ours);
    }
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
    if (!isThere(request, field)) {
      json.put(request, field, value);
    }
  }

  private static boolean isThere(ObjectNode request, String field) {
    return !request.at("/" + field.replace('.', '/')).isMissingNode();
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
