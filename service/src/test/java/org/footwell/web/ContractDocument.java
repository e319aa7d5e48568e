package org.footwell.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.dialect.OpenApi30;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/** The contract in its 3.0 form, with its schemas ready to validate. */
public final class ContractDocument {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** A whole number may be written with a point, as in 3.1 of the standard. */
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDialect(
          OpenApi30.getInstance(),
          registry ->
              registry.schemaRegistryConfig(
                  SchemaRegistryConfig.builder().losslessNarrowing(true).build()));

  private final JsonNode root;

  /** The same, where an object may hold nothing but what is declared. */
  private final JsonNode closed;

  private final Map<String, Schema> schemas = new ConcurrentHashMap<>();

  ContractDocument(JsonNode root) {
    this.root = root;
    inline(root.path("paths"));
    this.closed = root.deepCopy();
    close(closed);
  }

  /** The contract as the build wrote it. */
  public static ContractDocument built() {
    try (InputStream in =
        ContractDocument.class.getResourceAsStream("/contract/openapi-3.0.json")) {
      return new ContractDocument(MAPPER.readTree(in));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void close(JsonNode node) {
    if (node instanceof ObjectNode object
        && object.path("properties").isObject()
        && !object.has("additionalProperties")) {
      object.put("additionalProperties", false);
    }
    node.forEach(ContractDocument::close);
  }

  /** Puts shared parameters, answers and headers where they are referred to; schemas stay references. */
  private void inline(JsonNode node) {
    for (var entry : node.properties()) {
      ((ObjectNode) node).set(entry.getKey(), inlined(entry.getValue()));
    }
    for (int i = 0; node instanceof ArrayNode list && i < list.size(); i++) {
      list.set(i, inlined(list.get(i)));
    }
  }

  private JsonNode inlined(JsonNode value) {
    String to = value.path("$ref").asText("#/components/schemas/");
    JsonNode shared = to.startsWith("#/components/schemas/") ? value : root.at(to.substring(1));
    inline(shared);
    return shared;
  }

  public JsonNode root() {
    return root;
  }

  /** The operations of a path by method, those of every calculation included, or a missing node. */
  JsonNode path(String path) {
    JsonNode paths = root.path("paths");
    String ofAny = path.replaceFirst("^/v1/[a-z-]+/", "/v1/{calculation}/");
    return paths.path(paths.has(path) ? path : ofAny);
  }

  /** Every operation by its method and path. */
  public Map<String, JsonNode> operations() {
    Map<String, JsonNode> operations = new TreeMap<>();
    for (var path : root.path("paths").properties()) {
      for (var operation : path.getValue().properties()) {
        operations.put(operation.getKey() + " " + path.getKey(), operation.getValue());
      }
    }
    return operations;
  }

  /** What a value has against a schema of this document; nothing when it fits. */
  List<String> faults(JsonNode schema, JsonNode value) {
    Schema ready = schemas.computeIfAbsent(schema.toString(), text -> prepare(schema));
    return ready.validate(value).stream().map(ContractDocument::sentence).toList();
  }

  private static String sentence(Error error) {
    return error.getInstanceLocation() + ": " + error.getMessage();
  }

  private Schema prepare(JsonNode schema) {
    ObjectNode standalone = MAPPER.createObjectNode();
    JsonNode copy = schema.deepCopy();
    close(copy);
    standalone.putArray("allOf").add(copy);
    standalone.set("components", closed.path("components"));
    return REGISTRY.getSchema(standalone);
  }

  /** Names in an object that a schema, or what it is composed of, does not have. */
  List<String> undeclared(JsonNode schema, JsonNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    names.removeAll(declared(schema));
    return names;
  }

  private Set<String> declared(JsonNode schema) {
    JsonNode here = schema.has("$ref") ? resolved(schema) : schema;
    Set<String> names = new TreeSet<>();
    here.path("properties").fieldNames().forEachRemaining(names::add);
    here.path("allOf").forEach(part -> names.addAll(declared(part)));
    return names;
  }

  /** A schema that only names another. */
  JsonNode reference(String name) {
    return MAPPER.createObjectNode().put("$ref", "#/components/schemas/" + name);
  }

  /** The problem an operation declares for a status: by its number, or in words by the range it lies in. */
  JsonNode problem(JsonNode operation, int status) {
    JsonNode range = resolved(operation.at("/responses/" + status / 100 + "XX"));
    boolean named = range.path("description").asText().contains(Integer.toString(status));
    return named ? range : resolved(operation.at("/responses/" + status));
  }

  /** Follows a reference of a schema or an answer, also one that stands in an allOf to have a description beside it. */
  JsonNode resolved(JsonNode schema) {
    JsonNode bare = schema.path("allOf").size() == 1 ? schema.at("/allOf/0") : schema;
    return bare.has("$ref") ? root.at(bare.get("$ref").asText().substring(1)) : bare;
  }
}
