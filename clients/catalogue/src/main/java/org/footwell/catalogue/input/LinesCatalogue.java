package org.footwell.catalogue.input;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Row;

/** A catalogue with one JSON object a line. */
final class LinesCatalogue implements Catalogue {

  private final InputStream in;
  private final Lines lines;
  private final Mapping mapping;
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
    this.fields = fields;
    this.json = new RowJson(mapper, fields);
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
  public List<String> notes() {
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
    JsonNode given = request.path(column);
    String part = given.isValueNode() && !given.isNull() ? given.asText() : null;
    mapping.ignored().forEach(request::remove);
    if (mapping.partColumn() != null && !fields.has(mapping.ours(column))) {
      request.remove(column);
    }
    String twice = rename(request);
    if (twice != null) {
      return Row.refused(
          lines.number(),
          part,
          "duplicate",
          twice + " is given twice, also as " + mapping.renamed().get(twice) + ".");
    }
    mapping.constants().forEach((field, value) -> fill(request, field, value));
    return json.row(lines.number(), part, request);
  }

  private String theirPart() {
    return mapping.renamed().getOrDefault(Mapping.PART_FIELD, Mapping.PART_FIELD);
  }

  /** Gives every key its name here; the field that was there under both of its names, or null. */
  private String rename(ObjectNode request) {
    Map<String, JsonNode> values = new LinkedHashMap<>();
    mapping.renamed().forEach((ours, theirs) -> values.put(ours, request.remove(theirs)));
    values.values().removeIf(Objects::isNull);
    for (Map.Entry<String, JsonNode> value : values.entrySet()) {
      if (isThere(request, value.getKey())) {
        return value.getKey();
      }
      set(request, value.getKey(), value.getValue());
    }
    return null;
  }

  private void set(ObjectNode request, String field, JsonNode value) {
    if (field.indexOf('.') < 0) {
      request.set(field, value);
    } else {
      json.put(request, field, value.asText(), Decimal.POINT);
    }
  }

  private void fill(ObjectNode request, String field, String value) {
    if (!isThere(request, field)) {
      json.put(request, field, value, Decimal.POINT);
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
