package org.footwell.growth;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.calculation.Calculation;

/** Parts of requests that some request shows, for those that do not have them: the longest of each. */
final class Lenders {

  static final ObjectMapper MAPPER = new ObjectMapper();

  private final Schemas schemas;

  /** By the schema that holds them, which is one object in the contract, and their name. */
  private final IdentityHashMap<JsonNode, Map<String, JsonNode>> parts = new IdentityHashMap<>();

  Lenders(Schemas schemas) {
    this.schemas = schemas;
    for (Calculation<?, ?> calculation : Calculations.all()) {
      String id = calculation.card().id();
      JsonNode schema = schemas.ofRequest(id);
      collect(schema, read(calculation.card().example()));
      codes(id).forEach(request -> collect(schema, request));
    }
  }

  static JsonNode read(String json) {
    try {
      return MAPPER.readTree(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The requests that drive the codes of a calculation. */
  private static List<JsonNode> codes(String id) {
    try {
      Path folder = Path.of(Lenders.class.getResource("/codes").toURI()).resolve(id);
      if (!Files.isDirectory(folder)) {
        return List.of();
      }
      try (Stream<Path> files = Files.list(folder)) {
        return files
            .filter(file -> file.toString().endsWith(".json"))
            .sorted()
            .map(Lenders::text)
            .map(Lenders::read)
            .toList();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void collect(JsonNode schema, JsonNode node) {
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      JsonNode of = schemas.property(schema, field.getKey());
      if (field.getValue().isContainerNode() && schemas.holdsList(of)) {
        parts
            .computeIfAbsent(schema, any -> new TreeMap<>())
            .merge(field.getKey(), field.getValue(), (a, b) -> a.size() >= b.size() ? a : b);
        collect(of, field.getValue());
        JsonNode entry = schemas.resolved(of.path("items"));
        field.getValue().forEach(value -> collect(entry, value));
      }
    }
  }

  /** What stands under a name in some object of a schema, or null. */
  JsonNode of(JsonNode schema, String name) {
    return parts.getOrDefault(schema, Map.of()).get(name);
  }
}
