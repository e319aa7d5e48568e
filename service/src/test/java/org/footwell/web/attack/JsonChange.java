package org.footwell.web.attack;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Changes a request in JSON: types, bounds, sizes, depth, names. */
final class JsonChange {

  private static final int DEEPEST = 2_000;

  /** Values at the bounds of the contract, and beside them, by the names of fields. */
  private final Map<String, List<String>> bounds;

  /** Other requests, to take parts from. */
  private final List<JsonNode> others;

  JsonChange(Map<String, List<String>> bounds, List<JsonNode> others) {
    this.bounds = bounds;
    this.others = others;
  }

  /** The request with up to three changes, often with one, as text. */
  String of(JsonNode request, Random random) {
    JsonNode changed = request.deepCopy();
    for (int i = random.nextInt(4); i > 0; i -= 1 + random.nextInt(2)) {
      change(changed, random);
    }
    return random.nextInt(30) == 0 ? twice(changed.toString(), random) : changed.toString();
  }

  private void change(JsonNode root, Random random) {
    List<ObjectNode> objects = new ArrayList<>();
    List<ArrayNode> lists = new ArrayList<>();
    collect(root, objects, lists);
    if (!lists.isEmpty() && random.nextInt(5) == 0) {
      change(Nasty.one(lists, random), random);
    } else if (!objects.isEmpty()) {
      change(Nasty.one(objects, random), random);
    }
  }

  private static void collect(JsonNode node, List<ObjectNode> objects, List<ArrayNode> lists) {
    if (node instanceof ObjectNode object) {
      objects.add(object);
    } else if (node instanceof ArrayNode list) {
      lists.add(list);
    }
    node.forEach(below -> collect(below, objects, lists));
  }

  private void change(ObjectNode object, Random random) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    String name = names.isEmpty() ? "none" : Nasty.one(names, random);
    switch (random.nextInt(9)) {
      case 0 -> object.remove(name);
      case 1 -> object.set(Nasty.text(random), object.path(name).deepCopy());
      case 2 -> object.set(name + "s", object.remove(name));
      case 3 -> raw(object, name, deep(random));
      case 4 -> object.set(name, part(random));
      case 5, 6 -> raw(object, name, Nasty.json(random));
      default -> raw(object, name, atBound(name, random));
    }
  }

  private static void raw(ObjectNode object, String name, String json) {
    object.putRawValue(name, new RawValue(json));
  }

  private String atBound(String name, Random random) {
    return Nasty.one(bounds.getOrDefault(name, List.of("1", "0", "100")), random);
  }

  private static String deep(Random random) {
    int depth = 1 + random.nextInt(random.nextInt(10) == 0 ? DEEPEST : 60);
    return random.nextBoolean()
        ? "[".repeat(depth) + "]".repeat(depth)
        : "{\"a\":".repeat(depth) + "1" + "}".repeat(depth);
  }

  private JsonNode part(Random random) {
    JsonNode here = Nasty.one(others, random);
    for (int i = random.nextInt(4); i > 0 && here.size() > 0; i--) {
      List<JsonNode> below = new ArrayList<>();
      here.forEach(below::add);
      here = Nasty.one(below, random);
    }
    return here.deepCopy();
  }

  private void change(ArrayNode list, Random random) {
    switch (random.nextInt(4)) {
      case 0 -> list.removeAll();
      case 1 -> list.addRawValue(new RawValue(Nasty.json(random)));
      case 2 -> list.add(part(random));
      default -> {
        List<JsonNode> entries = new ArrayList<>();
        list.forEach(entries::add);
        for (int i = 1 << random.nextInt(8); i > 0 && !entries.isEmpty(); i--) {
          list.add(Nasty.one(entries, random).deepCopy());
        }
      }
    }
  }

  /** With one of its fields once more. */
  private static String twice(String json, Random random) {
    int comma = json.indexOf(',', random.nextInt(json.length()));
    int open = json.indexOf('{');
    return comma < 0 || open < 0
        ? json + json
        : json.substring(0, open + 1)
            + json.substring(open + 1, comma)
            + ","
            + json.substring(open + 1);
  }
}
