package org.footwell.growth;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Mends a request whose lists were made longer by repeating entries, as the rules between its fields ask. */
final class Relations {

  private final Schemas schemas;

  /** Whether what stands for pairs of entries, such as distances, gets an entry for each pair. */
  private final boolean allPairs;

  Relations(Schemas schemas, boolean allPairs) {
    this.schemas = schemas;
    this.allPairs = allPairs;
  }

  void mend(JsonNode schema, JsonNode node) {
    if (node.isObject()) {
      node.properties().forEach(f -> mend(schemas.property(schema, f.getKey()), f.getValue()));
      rules(schema.path("x-rules"), node);
    } else if (node.isArray()) {
      JsonNode entry = schemas.resolved(schema.path("items"));
      node.forEach(value -> mend(entry, value));
    }
  }

  private void rules(JsonNode rules, JsonNode node) {
    Map<String, String> targets = new TreeMap<>();
    List<List<String>> unique = new ArrayList<>();
    for (JsonNode rule : rules) {
      List<String> fields = new ArrayList<>();
      rule.path("fields").forEach(field -> fields.add(field.asText()));
      switch (rule.path("rule").asText()) {
        case "refers_to" -> targets.put(fields.get(0), fields.get(1));
        case "unique" -> unique.add(fields);
        case "ascending", "not_falling" -> fields.forEach(field -> spread(node, field));
        default -> {
          // The others are not broken by more entries.
        }
      }
    }
    // Names first, then what refers to them.
    for (List<String> fields : unique) {
      if (fields.size() == 1 && !targets.containsKey(fields.get(0))) {
        rename(Spot.given(node, fields.get(0)));
      }
    }
    targets.forEach((field, target) -> point(Spot.given(node, field), names(node, target)));
    for (List<String> fields : unique) {
      if (fields.size() == 1 && targets.containsKey(fields.get(0))) {
        differ(Spot.given(node, fields.get(0)), names(node, targets.get(fields.get(0))));
      } else if (targets.keySet().containsAll(fields)) {
        combine(node, fields, fields.stream().map(targets::get).toList());
      } else if (fields.size() > 1) {
        spreadWithin(node, fields.get(fields.size() - 1));
      }
    }
  }

  private static void rename(List<Spot> spots) {
    Set<JsonNode> used = new HashSet<>();
    int more = 0;
    for (Spot spot : spots) {
      JsonNode value = spot.get();
      while (!used.add(spot.get())) {
        more++;
        ArrayNode any = Lenders.MAPPER.createArrayNode();
        spot.set(
            value.isTextual()
                ? any.textNode(value.asText() + "_" + more)
                : value.isInt()
                    ? any.numberNode(value.asInt() + more)
                    : any.numberNode(value.asDouble() + more));
      }
    }
  }

  private static List<JsonNode> names(JsonNode node, String target) {
    return Spot.given(node, target).stream().map(Spot::get).toList();
  }

  /** What refers to nothing refers to the names there are, in turn. */
  private static void point(List<Spot> spots, List<JsonNode> names) {
    for (int i = 0; i < spots.size() && !names.isEmpty(); i++) {
      if (!names.contains(spots.get(i).get())) {
        spots.get(i).set(names.get(i % names.size()));
      }
    }
  }

  /** References of which no two may be alike: one that repeats another becomes one not used yet. */
  private static void differ(List<Spot> spots, List<JsonNode> names) {
    List<JsonNode> free = new ArrayList<>(names);
    spots.forEach(spot -> free.remove(spot.get()));
    Set<JsonNode> used = new HashSet<>();
    for (Spot spot : spots) {
      if (!used.add(spot.get()) && !free.isEmpty()) {
        spot.set(free.remove(0));
      }
    }
  }

  /** Rising numbers between the smallest and the largest there are, in equal ratios where they are above 0. */
  private static void spread(JsonNode node, String field) {
    List<Spot> spots = field.contains(Spot.ANY) ? Spot.given(node, field) : List.of();
    double low = spots.stream().mapToDouble(s -> s.get().asDouble()).min().orElse(0);
    double high = spots.stream().mapToDouble(s -> s.get().asDouble()).max().orElse(0);
    boolean rising = true;
    for (int i = 1; i < spots.size(); i++) {
      rising &= spots.get(i).get().asDouble() > spots.get(i - 1).get().asDouble();
    }
    for (int i = 0; !rising && i < spots.size(); i++) {
      double share = i / (spots.size() - 1.0);
      spots.get(i).set(DoubleNode.valueOf(between(low, high > low ? high : 2 * low, share)));
    }
  }

  private static double between(double low, double high, double share) {
    return low > 0 ? low * Math.pow(high / low, share) : low + share * (high - low);
  }

  /** The same of a number that must differ among entries of one name: all of them differ. */
  private static void spreadWithin(JsonNode node, String field) {
    List<Spot> spots = Spot.given(node, field);
    if (!spots.isEmpty() && spots.get(0).get().isNumber()) {
      spread(node, field);
    }
  }

  /** References that no two entries may share: each entry that repeats another gets one not used yet. */
  private void combine(JsonNode node, List<String> fields, List<String> targets) {
    String list = fields.get(0).substring(0, fields.get(0).indexOf("." + Spot.ANY));
    if (!(node.path(list) instanceof ArrayNode entries) || entries.isEmpty()) {
      return;
    }
    List<String> names = fields.stream().map(f -> f.substring(f.lastIndexOf('.') + 1)).toList();
    List<List<JsonNode>> free = combinations(node, targets);
    List<ObjectNode> repeated = new ArrayList<>();
    Set<List<JsonNode>> used = new HashSet<>();
    for (JsonNode entry : entries) {
      List<JsonNode> own = names.stream().map(entry::path).toList();
      if (!used.add(own)) {
        repeated.add((ObjectNode) entry);
      }
    }
    free.removeAll(used);
    for (List<JsonNode> own : free) {
      boolean more = repeated.isEmpty();
      if (more && !allPairs) {
        return;
      }
      ObjectNode entry = more ? entries.get(0).deepCopy() : repeated.remove(0);
      for (int i = 0; i < names.size(); i++) {
        entry.set(names.get(i), own.get(i));
      }
      if (more) {
        entries.add(entry);
      }
    }
  }

  private static List<List<JsonNode>> combinations(JsonNode node, List<String> targets) {
    List<List<JsonNode>> all = new ArrayList<>(List.of(List.of()));
    for (String target : targets) {
      List<List<JsonNode>> longer = new ArrayList<>();
      for (List<JsonNode> start : all) {
        for (JsonNode name : names(node, target)) {
          List<JsonNode> one = new ArrayList<>(start);
          one.add(name);
          longer.add(one);
        }
      }
      all = longer;
    }
    return all;
  }
}
