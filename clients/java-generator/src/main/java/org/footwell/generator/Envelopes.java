package org.footwell.generator;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.media.Schema;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.openapitools.codegen.utils.ModelUtils;

/** Schemas that are alike but for what they hold: each is one generic class, written by hand. */
final class Envelopes {

  private Envelopes() {}

  /** The Java type of every envelope: SoundLevelAnswer is Answer&lt;SoundLevelResult&gt;. */
  static Map<String, String> of(OpenAPI contract) {
    Map<String, String> types = new TreeMap<>();
    contract
        .getComponents()
        .getSchemas()
        .forEach(
            (name, schema) -> {
              if (name.endsWith("OfPlan")) {
                String request = held(schema, "request");
                types.put(name, "OfPlan<" + request + ", " + held(schema, "result") + ">");
              } else if (name.endsWith("Answer")) {
                types.put(name, "Answer<" + held(schema, "result") + ">");
              } else if (name.endsWith("Row") && !name.equals("Row")) {
                types.put(name, "Row<" + held(schema, "result") + ">");
              }
            });
    return types;
  }

  /** What the envelope holds, itself or, where it is made of several, one of them. */
  private static String held(Schema<?> envelope, String property) {
    return Stream.concat(Stream.of(envelope), schemas(envelope.getAllOf()))
        .filter(one -> one.getProperties() != null && one.getProperties().containsKey(property))
        .map(one -> ModelUtils.getSimpleRef(one.getProperties().get(property).get$ref()))
        .findFirst()
        .orElseThrow();
  }

  /** The parser's lists have no type. */
  private static Stream<Schema<?>> schemas(List<?> untyped) {
    return untyped == null ? Stream.of() : untyped.stream().map(one -> (Schema<?>) one);
  }
}
