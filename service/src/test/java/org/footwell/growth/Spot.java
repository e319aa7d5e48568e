package org.footwell.growth;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** Where something stands, or could stand, in a request: a field of an object or an entry of a list. */
record Spot(JsonNode holder, String name) {

  /** What stands for any index in a path. */
  static final String ANY = "*";

  JsonNode get() {
    return holder instanceof ArrayNode list ? list.path(Integer.parseInt(name)) : holder.path(name);
  }

  void set(JsonNode value) {
    if (holder instanceof ArrayNode list) {
      list.set(Integer.parseInt(name), value);
    } else {
      ((ObjectNode) holder).set(name, value);
    }
  }

  /** Every place below a node that a dotted path leads to, where what holds it is there. */
  static List<Spot> all(JsonNode from, String path) {
    List<JsonNode> holders = List.of(from);
    int dot = path.lastIndexOf('.');
    if (dot >= 0) {
      holders = all(from, path.substring(0, dot)).stream().map(Spot::get).toList();
    }
    String last = path.substring(dot + 1);
    List<Spot> spots = new ArrayList<>();
    for (JsonNode holder : holders) {
      if (holder.isArray() && last.equals(ANY)) {
        for (int i = 0; i < holder.size(); i++) {
          spots.add(new Spot(holder, Integer.toString(i)));
        }
      } else if (holder.isObject()) {
        spots.add(new Spot(holder, last));
      }
    }
    return spots;
  }

  /** The same of those where something is given. */
  static List<Spot> given(JsonNode from, String path) {
    return all(from, path).stream().filter(spot -> !spot.get().isMissingNode()).toList();
  }
}
