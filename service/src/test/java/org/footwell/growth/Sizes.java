package org.footwell.growth;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.footwell.growth.Size.Kind;

/** Finds what can be larger in a request. */
final class Sizes {

  private static final Pattern COUNT = Pattern.compile("(.*_)?count|.*_per_octave");

  /** Longer lists are recordings, which come as files. */
  private static final int LONGEST = 100_000;

  private final Schemas schemas;
  private final Lenders lenders;
  private final Map<String, Size> found = new LinkedHashMap<>();

  private Sizes(Schemas schemas, Lenders lenders) {
    this.schemas = schemas;
    this.lenders = lenders;
  }

  /**
   * Those that are not the largest already, each path once: channels of a plan before all that would take
   * what they need, then outer lists before inner ones.
   */
  static Collection<Size> of(Schemas schemas, Lenders lenders, JsonNode schema, JsonNode request) {
    Sizes sizes = new Sizes(schemas, lenders);
    sizes.walk(schema, request, "");
    List<Size> all = new ArrayList<>(sizes.found.values());
    all.sort(Comparator.comparing(size -> size.kind() != Kind.CHANNELS));
    return all;
  }

  private void walk(JsonNode schema, JsonNode node, String above) {
    List<Runnable> below = new ArrayList<>();
    for (Map.Entry<String, JsonNode> property : schema.path("properties").properties()) {
      JsonNode value = node.path(property.getKey());
      JsonNode of = schemas.resolved(property.getValue());
      String path = above + property.getKey();
      if (value.isMissingNode()) {
        if (schemas.holdsList(of) && lenders.of(schema, property.getKey()) != null) {
          add(new Size(path, Kind.LENT, 0, 1));
        }
      } else if (Schemas.isList(of)) {
        list(schema, property.getKey(), of, value, path);
        below.add(() -> entries(of, value, path));
      } else if (isCount(property.getKey(), of)) {
        add(new Size(path, Kind.COUNT, value.asInt(), of.path("maximum").asInt()));
      } else if (value.isObject()) {
        below.add(() -> walk(of, value, path + "."));
      }
    }
    below.forEach(Runnable::run);
  }

  private static boolean isCount(String name, JsonNode schema) {
    return schema.path("type").asText().equals("integer") && COUNT.matcher(name).matches();
  }

  private void list(JsonNode holder, String name, JsonNode of, JsonNode value, String path) {
    int most = of.path("maxItems").asInt();
    if (most <= LONGEST && !value.isEmpty()) {
      boolean channels = name.equals("channels") && PlanChannels.isPlan(holder);
      add(new Size(path, channels ? Kind.CHANNELS : Kind.LIST, value.size(), most));
    }
  }

  private void entries(JsonNode of, JsonNode list, String path) {
    JsonNode entry = schemas.resolved(of.path("items"));
    list.forEach(value -> walk(entry, value, path + "." + Spot.ANY + "."));
  }

  private void add(Size size) {
    if (size.now() < size.most()) {
      found.putIfAbsent(size.path(), size);
    }
  }
}
