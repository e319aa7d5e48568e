package org.footwell.growth;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Makes requests of one calculation larger, the rules between their fields kept as far as they are declared. */
final class Grower {

  private static final String COILS = "coils";
  private static final String NETWORK = "network";

  /** In what one part differs from another of its kind. */
  private static final Pattern DIFFERS =
      Pattern.compile("price|mass_g|fs_hz|qes|xmax_mm|continuous_power_w");

  /** How entries are repeated. */
  enum Way {
    VARIED(true, false),
    VARIED_WITH_ALL_PAIRS(true, true),
    ALIKE(false, false),
    ALIKE_WITH_ALL_PAIRS(false, true);

    /** Whether their figures differ a little. */
    private final boolean varied;

    /** Whether what stands for pairs of entries gets one for each pair. */
    private final boolean allPairs;

    Way(boolean varied, boolean allPairs) {
      this.varied = varied;
      this.allPairs = allPairs;
    }
  }

  private final Schemas schemas;
  private final Lenders lenders;
  private final JsonNode schema;

  Grower(Schemas schemas, Lenders lenders, JsonNode schema) {
    this.schemas = schemas;
    this.lenders = lenders;
    this.schema = schema;
  }

  /** What can be larger in a request. */
  Collection<Size> sizes(JsonNode request) {
    return Sizes.of(schemas, lenders, schema, request);
  }

  /** The request made larger at one place, in one of the ways. */
  JsonNode grown(JsonNode request, Size size, int count, Way way) {
    JsonNode grown = request.deepCopy();
    for (Spot spot : spots(grown, size)) {
      switch (size.kind()) {
        case COUNT -> spot.set(IntNode.valueOf(count));
        case LENT -> spot.set(lent(size.path()).deepCopy());
        case CHANNELS -> PlanChannels.grow(spot.holder(), count);
        case LIST -> repeat((ArrayNode) spot.get(), count, way.varied);
      }
    }
    new Relations(schemas, way.allPairs).mend(schema, grown);
    nameCoils(grown);
    return grown;
  }

  private static List<Spot> spots(JsonNode request, Size size) {
    return size.kind() == Size.Kind.LENT
        ? Spot.all(request, size.path()).stream()
            .filter(spot -> spot.get().isMissingNode())
            .toList()
        : Spot.given(request, size.path());
  }

  private JsonNode lent(String path) {
    JsonNode holder = schema;
    List<String> names = new ArrayList<>(List.of(path.split("\\.", -1)));
    String last = names.remove(names.size() - 1);
    for (String name : names) {
      holder =
          name.equals(Spot.ANY)
              ? schemas.resolved(holder.path("items"))
              : schemas.property(holder, name);
    }
    return lenders.of(holder, last);
  }

  /** More entries in a list; those of nothing but numbers lie between their neighbours where they differ. */
  private static void repeat(ArrayNode list, int count, boolean varied) {
    List<JsonNode> own = new ArrayList<>();
    list.forEach(own::add);
    list.removeAll();
    boolean curve = varied && own.size() > 1 && own.stream().allMatch(Grower::ofNumbers);
    int size = own.isEmpty() ? 0 : Math.max(count, own.size());
    for (int i = 0; i < size; i++) {
      if (curve) {
        double at = i * (own.size() - 1.0) / (size - 1);
        int before = Math.min((int) at, own.size() - 2);
        list.add(between(own.get(before), own.get(before + 1), at - before));
      } else {
        JsonNode more = own.get(i % own.size()).deepCopy();
        if (varied && i >= own.size()) {
          vary(more, new Random(i));
        }
        list.add(more);
      }
    }
  }

  private static boolean ofNumbers(JsonNode entry) {
    return entry.isNumber()
        || (entry.isObject() && entry.valueStream().allMatch(value -> value.isNumber()));
  }

  private static JsonNode between(JsonNode low, JsonNode high, double share) {
    if (low.isNumber()) {
      return DoubleNode.valueOf(low.asDouble() + share * (high.asDouble() - low.asDouble()));
    }
    JsonNode entry = low.deepCopy();
    for (Map.Entry<String, JsonNode> field : entry.properties()) {
      JsonNode next = high.path(field.getKey());
      field.setValue(between(field.getValue(), next.isNumber() ? next : field.getValue(), share));
    }
    return entry;
  }

  private static void vary(JsonNode part, Random random) {
    for (Map.Entry<String, JsonNode> field : part.properties()) {
      if (DIFFERS.matcher(field.getKey()).matches()) {
        double factor = 0.8 + 0.4 * random.nextDouble();
        double value = Math.round(field.getValue().asDouble() * factor * 100) / 100.0;
        field.setValue(DoubleNode.valueOf(value));
      }
      vary(field.getValue(), random);
    }
  }

  /** A network of coils has every coil in it, one pair in parallel after the other, all of them in series. */
  private static void nameCoils(JsonNode request) {
    if (request.has(NETWORK) && request.path(COILS).size() > 1) {
      List<String> pairs = new ArrayList<>();
      List<Spot> names = Spot.given(request, COILS + ".*.name");
      for (int i = 0; i < names.size(); i += 2) {
        pairs.add(
            names.subList(i, Math.min(i + 2, names.size())).stream()
                .map(spot -> spot.get().asText())
                .collect(Collectors.joining("||", "(", ")")));
      }
      ((ObjectNode) request).put(NETWORK, String.join("+", pairs));
    }
  }
}
