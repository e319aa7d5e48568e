package org.footwell.openapi;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.parser.OpenAPIV3Parser;
import io.swagger.v3.parser.core.models.ParseOptions;
import io.swagger.v3.parser.core.models.SwaggerParseResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.openapitools.openapidiff.core.OpenApiCompare;
import org.openapitools.openapidiff.core.compare.OpenApiDiffOptions;
import org.openapitools.openapidiff.core.model.ChangedOpenApi;
import org.openapitools.openapidiff.core.model.ChangedOperation;

/**
 * What would break a caller who knows only the older of two contracts. openapi-diff finds most; it
 * overlooks changes within schemas, which {@link SchemaBreaks} finds.
 */
final class Compatibility {

  private final OpenAPI before;
  private final OpenAPI after;
  private final SchemaBreaks schemas;
  private final ChangedOpenApi diff;

  Compatibility(String before, String after) {
    this.before = read(before);
    this.after = read(after);
    schemas = new SchemaBreaks(this.before, this.after);
    OpenApiDiffOptions options =
        OpenApiDiffOptions.builder()
            // A changed operationId renames a method of every generated client.
            .configProperty("incompatible.operation.id.changed", "true")
            // It compares the digits of bounds without their decimal point: 0.5 above 1.
            .configProperty("incompatible.request.numeric.range.decreased", "false")
            .configProperty("incompatible.response.numeric.range.increased", "false")
            .build();
    // It alters what it reads, so it reads its own copies.
    diff = OpenApiCompare.fromSpecifications(read(before), read(after), options);
  }

  private static OpenAPI read(String contract) {
    ParseOptions options = new ParseOptions();
    options.setResolve(true); // shared parameters, bodies and answers; schemas stay references
    options.setResolveRequestBody(true);
    options.setResolveResponses(true);
    SwaggerParseResult result = new OpenAPIV3Parser().readContents(contract, null, options);
    if (!result.getMessages().isEmpty()) {
      throw new IllegalArgumentException(String.join("\n", result.getMessages()));
    }
    return result.getOpenAPI();
  }

  /** All changes, breaking or not. */
  ChangedOpenApi changes() {
    return diff;
  }

  /** One line for each break, empty when there is none. */
  List<String> breaks() {
    List<String> found = new ArrayList<>();
    diff.getMissingEndpoints()
        .forEach(gone -> found.add(gone.getMethod() + " " + gone.getPathUrl() + " is gone"));
    for (ChangedOperation operation : diff.getChangedOperations()) {
      if (operation.isIncompatible()) {
        found.add(operation.getHttpMethod() + " " + operation.getPathUrl() + " has changed");
      }
    }
    before.getPaths().forEach(this::path);
    found.addAll(schemas.found());
    if (found.isEmpty() && diff.isIncompatible()) {
      found.add("the contract as a whole has changed");
    }
    return found;
  }

  private void path(String path, PathItem item) {
    PathItem now = after.getPaths().get(path);
    if (now == null) {
      return;
    }
    item.readOperationsMap()
        .forEach(
            (method, operation) -> {
              Operation successor = now.readOperationsMap().get(method);
              if (successor != null) {
                operation(method + " " + path, operation, successor);
              }
            });
  }

  private void operation(String place, Operation old, Operation now) {
    for (Parameter parameter : orEmpty(old.getParameters())) {
      for (Parameter successor : orEmpty(now.getParameters())) {
        if (parameter.getName().equals(successor.getName())
            && parameter.getIn().equals(successor.getIn())) {
          String at = place + " parameter " + parameter.getName();
          schemas.request(at, parameter.getSchema(), successor.getSchema());
        }
      }
    }
    if (old.getRequestBody() != null && now.getRequestBody() != null) {
      Content successor = now.getRequestBody().getContent();
      orEmpty(old.getRequestBody().getContent())
          .forEach((type, body) -> body(place + " request " + type, body, successor.get(type)));
    }
    old.getResponses()
        .forEach((status, answer) -> answer(place, status, answer, now.getResponses().get(status)));
  }

  private void body(String place, MediaType old, MediaType now) {
    if (now != null) {
      schemas.request(place, old.getSchema(), now.getSchema());
    }
  }

  private void answer(String place, String status, ApiResponse old, ApiResponse now) {
    if (now == null || now.getContent() == null) {
      return;
    }
    orEmpty(old.getContent())
        .forEach(
            (type, body) -> {
              MediaType successor = now.getContent().get(type);
              if (successor != null) {
                String at = place + " answer " + status + " " + type;
                schemas.answer(at, body.getSchema(), successor.getSchema());
              }
            });
  }

  private static <T> List<T> orEmpty(List<T> list) {
    return list == null ? List.of() : list;
  }

  private static Map<String, MediaType> orEmpty(Content content) {
    return content == null ? Map.of() : content;
  }
}
