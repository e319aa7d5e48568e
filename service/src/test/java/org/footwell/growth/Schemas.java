package org.footwell.growth;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The schemas of requests in the contract. */
final class Schemas {

  private static final String REFERENCE = "$ref";

  private final JsonNode contract = built();

  private static JsonNode built() {
    try (InputStream in = Schemas.class.getResourceAsStream("/contract/openapi-3.0.json")) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Of the request of a calculation. */
  JsonNode ofRequest(String id) {
    JsonNode post = contract.path("paths").path("/v1/" + id).path("post");
    return resolved(post.at("/requestBody/content/application~1json/schema"));
  }

  /** Follows a reference, also one that stands in an allOf to have a description beside it. */
  JsonNode resolved(JsonNode schema) {
    JsonNode bare = schema.path("allOf").size() == 1 ? schema.at("/allOf/0") : schema;
    return bare.has(REFERENCE) ? contract.at(bare.get(REFERENCE).asText().substring(1)) : bare;
  }

  JsonNode property(JsonNode schema, String name) {
    return resolved(schema.path("properties").path(name));
  }

  static boolean isList(JsonNode schema) {
    return schema.path("type").asText().equals("array");
  }

  /** Whether it is a list, or an object with one somewhere below it. */
  boolean holdsList(JsonNode schema) {
    if (isList(schema)) {
      return true;
    }
    for (JsonNode property : schema.path("properties")) {
      if (holdsList(resolved(property))) {
        return true;
      }
    }
    return false;
  }
}
