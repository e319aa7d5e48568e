package org.footwell.openapi;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The promises of a released contract as text: one line a place, sorted. Where everything below a
 * place is as below an earlier one, the line says so, and what follows is left out.
 */
final class Baseline {

  private static final String AS = "as";

  private static final String HEAD =
      """
      # What callers of the released contract depend on; the build refuses a contract that takes any of
      # it away. At a release it is written anew; DEVELOPERS.md has the command.
      # ? is the query, > what is sent, < what comes back, * every entry of a list, {name} any name;
      # "as" means that all below is as below that place.
      """;

  private Baseline() {}

  static String write(SortedMap<String, ObjectNode> promises) {
    Map<String, String> firstPlaces = new HashMap<>();
    StringBuilder text = new StringBuilder(HEAD);
    String told = null;
    for (var promise : promises.entrySet()) {
      String place = promise.getKey();
      if (told != null && below(place, told)) {
        continue;
      }
      ObjectNode facts = promise.getValue().deepCopy();
      String all = children(promises, place).toString();
      String first = all.equals("{}") ? null : firstPlaces.putIfAbsent(all, place);
      if (first != null) {
        facts.put(AS, first);
        told = place;
      }
      text.append(place).append(": ").append(line(facts)).append('\n');
    }
    return text.toString();
  }

  private static String line(ObjectNode facts) {
    return facts.properties().stream()
        .map(fact -> fact.getKey() + ": " + fact.getValue())
        .collect(Collectors.joining(", ", "{", "}"));
  }

  static SortedMap<String, ObjectNode> read(String text) throws IOException {
    SortedMap<String, ObjectNode> promises = new TreeMap<>();
    for (var line : new YAMLMapper().readTree(text).properties()) {
      String place = line.getKey();
      ObjectNode facts = (ObjectNode) line.getValue();
      JsonNode first = facts.remove(AS);
      promises.put(place, facts);
      if (first != null) {
        // Places are sorted: what it refers to has been read, and in full.
        children(promises, first.asText())
            .forEach((rest, same) -> promises.put(place + rest, same));
      }
    }
    return promises;
  }

  /** What stands below a place, by the rest of its own place. */
  private static SortedMap<String, ObjectNode> children(
      SortedMap<String, ObjectNode> promises, String place) {
    SortedMap<String, ObjectNode> children = new TreeMap<>();
    for (var one : promises.tailMap(place + " ").entrySet()) {
      if (!one.getKey().startsWith(place)) {
        break;
      }
      if (below(one.getKey(), place)) {
        children.put(one.getKey().substring(place.length()), one.getValue());
      }
    }
    return children;
  }

  private static boolean below(String place, String upper) {
    return place.startsWith(upper + " ") || place.startsWith(upper + ".");
  }
}
