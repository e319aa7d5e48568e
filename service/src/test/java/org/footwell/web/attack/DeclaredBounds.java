package org.footwell.web.attack;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the contract says of every field by its name, as values at that bound and just beyond it. */
final class DeclaredBounds {

  private static final BigDecimal NEXT = new BigDecimal("1e-9");
  private static final int MOST_ENTRIES = 5_000;

  private final Map<String, List<String>> byName = new HashMap<>();

  private DeclaredBounds() {}

  static Map<String, List<String>> of(JsonNode contract) {
    DeclaredBounds bounds = new DeclaredBounds();
    bounds.collect(contract.at("/components/schemas"));
    return bounds.byName;
  }

  private void collect(JsonNode node) {
    node.path("properties")
        .properties()
        .forEach(property -> add(property.getKey(), property.getValue()));
    node.forEach(this::collect);
  }

  private void add(String name, JsonNode schema) {
    List<String> values = byName.computeIfAbsent(name, any -> new ArrayList<>());
    for (String bound : List.of("minimum", "maximum")) {
      if (schema.has(bound)) {
        BigDecimal at = schema.get(bound).decimalValue();
        values.add(at.toPlainString());
        values.add(at.add(NEXT).toPlainString());
        values.add(at.subtract(NEXT).toPlainString());
      }
    }
    schema.path("enum").forEach(value -> values.add(value.toString()));
    if (schema.has("maxLength")) {
      int most = schema.get("maxLength").asInt();
      values.add(Nasty.quoted("a".repeat(most)));
      values.add(Nasty.quoted("ä".repeat(most + 1)));
    }
    int most = schema.path("maxItems").asInt(MOST_ENTRIES);
    if (most < MOST_ENTRIES) {
      values.add("[" + "1,".repeat(most) + "1]");
      values.add("[" + "{},".repeat(most - 1) + "{}]");
    }
    if (values.isEmpty()) {
      byName.remove(name);
    }
  }
}
