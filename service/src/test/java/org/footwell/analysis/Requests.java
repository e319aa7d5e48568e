package org.footwell.analysis;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Shape;
import org.footwell.calculation.UnknownPath;
import org.footwell.web.request.Endpoint;
import org.footwell.web.request.Rendering;
import org.footwell.web.request.Trees;

/** Requests as they are sent, and what can be varied in them and asked of their results. */
final class Requests {

  private Requests() {}

  /** The example of a card. */
  static ObjectNode example(Calculation<?, ?> calculation) {
    return read(calculation.card().example());
  }

  static ObjectNode read(String json) {
    try {
      return (ObjectNode) Trees.MAPPER.readTree(json);
    } catch (JsonProcessingException e) {
      throw new AssertionError("not JSON: " + json, e);
    }
  }

  /** As maps and lists, the way an analysis gets it. */
  static Map<?, ?> untyped(JsonNode request) {
    return (Map<?, ?>) Endpoint.untyped(Rendering.utf8(request.toString()));
  }

  /** Dotted paths to all numbers it gives, and to all that it could give of its own fields. */
  static List<String> numbers(Calculation<?, ?> calculation, JsonNode request) {
    Shape<?> shape = Shape.of(calculation.card().request());
    List<String> given = new ArrayList<>();
    collect(request, "", given);
    Map<?, ?> untyped = untyped(request);
    Stream<String> absent =
        shape.columns().stream().map(Shape.Column::path).filter(path -> !path.contains("*"));
    return Stream.concat(given.stream(), absent)
        .distinct()
        .filter(path -> isNumber(shape, path, untyped))
        .toList();
  }

  private static boolean isNumber(Shape<?> shape, String path, Map<?, ?> request) {
    try {
      return shape.place(path, request).isNumber();
    } catch (UnknownPath noSingleValue) {
      return false;
    }
  }

  private static void collect(JsonNode node, String path, List<String> into) {
    if (node.isNumber()) {
      into.add(path);
    } else if (node.isObject()) {
      node.properties()
          .forEach(
              one ->
                  collect(
                      one.getValue(),
                      path.isEmpty() ? one.getKey() : path + "." + one.getKey(),
                      into));
    } else {
      for (int i = 0; i < node.size(); i++) {
        collect(node.get(i), path + "." + i, into);
      }
    }
  }

  /** The request with a number put in, groups on the way made. */
  static ObjectNode with(ObjectNode request, String path, double value) {
    ObjectNode copy = request.deepCopy();
    String[] parts = path.split("\\.", -1);
    ContainerNode<?> here = copy;
    for (int i = 0; i < parts.length - 1; i++) {
      here = below(here, parts[i]);
    }
    String last = parts[parts.length - 1];
    if (here instanceof ArrayNode list) {
      list.set(Integer.parseInt(last), DoubleNode.valueOf(value));
    } else {
      ((ObjectNode) here).put(last, value);
    }
    return copy;
  }

  private static ContainerNode<?> below(ContainerNode<?> here, String part) {
    if (here instanceof ArrayNode list) {
      return (ContainerNode<?>) list.get(Integer.parseInt(part));
    }
    return here.has(part) ? (ContainerNode<?>) here.get(part) : ((ObjectNode) here).putObject(part);
  }

  /** Places of all single values of a result, the first entry of each list. */
  static List<String> outputs(Calculation<?, ?> calculation) {
    Shape<?> shape = Shape.of(calculation.card().result());
    return shape.columns().stream()
        .map(column -> column.path().replace("*", "0"))
        .filter(path -> leads(shape, path))
        .toList();
  }

  private static boolean leads(Shape<?> result, String path) {
    try {
      return result.place(path).pointer().startsWith("/");
    } catch (UnknownPath noSingleValue) {
      return false;
    }
  }
}
