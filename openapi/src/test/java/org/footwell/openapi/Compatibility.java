package org.footwell.openapi;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What would break a caller who knows only the older promises: something is gone, a request takes
 * less, an answer promises less. What is new breaks nobody, unless it must be sent.
 */
final class Compatibility {

  private final Map<String, ObjectNode> before;
  private final Map<String, ObjectNode> after;
  private final List<String> found = new ArrayList<>();

  private Compatibility(Map<String, ObjectNode> before, Map<String, ObjectNode> after) {
    this.before = before;
    this.after = after;
  }

  /** One line for each break, empty when there is none. */
  static List<String> breaks(Map<String, ObjectNode> before, Map<String, ObjectNode> after) {
    Compatibility compatibility = new Compatibility(before, after);
    before.forEach(compatibility::compare);
    after.forEach(compatibility::demanded);
    return compatibility.found;
  }

  private void compare(String place, ObjectNode was) {
    ObjectNode is = after.get(place);
    if (is == null) {
      // What was within it is gone as well, and told by this line.
      report(
          place, "removed", after.containsKey(parent(place)) || !before.containsKey(parent(place)));
      return;
    }
    for (String fact :
        List.of("type", "format", "operationId", "in", "style", "explode", "within")) {
      report(place, fact + " changed", !was.path(fact).equals(is.path(fact)));
    }
    if (place.contains(" < ")) {
      weakened(place, was, is);
    } else {
      narrowed(place, was, is);
    }
  }

  /** Something new that must be sent where nothing had to be. */
  private void demanded(String place, ObjectNode is) {
    boolean sent = !place.contains(" < ");
    boolean fresh = !before.containsKey(place) && before.containsKey(parent(place));
    report(place, "now required", sent && fresh && is.has("required"));
  }

  private void narrowed(String place, ObjectNode was, ObjectNode is) {
    report(place, "now required", !was.has("required") && is.has("required"));
    report(place, "no longer nullable", holds(was, "nullable") && !holds(is, "nullable"));
    report(place, "default changed", !was.path("default").equals(is.path("default")));
    report(
        place,
        "pattern changed",
        is.has("pattern") && !is.get("pattern").equals(was.get("pattern")));
    report(place, "fewer values", beyond(is.path("enum"), was.path("enum")));
    report(place, "minimum raised", tightened(was, is, "inimum", 1));
    report(place, "maximum lowered", tightened(was, is, "aximum", -1));
    report(place, "must be longer", raised(was, is, "minLength"));
    report(place, "must be shorter", lowered(was, is, "maxLength"));
    report(place, "must have more entries", raised(was, is, "minItems"));
    report(place, "must have fewer entries", lowered(was, is, "maxItems"));
    report(place, "entries must differ", !holds(was, "uniqueItems") && holds(is, "uniqueItems"));
    report(place, "unknown fields now refused", !was.has("closed") && is.has("closed"));
  }

  private void weakened(String place, ObjectNode was, ObjectNode is) {
    report(place, "may be absent", was.has("required") && !is.has("required"));
    report(place, "now nullable", !holds(was, "nullable") && holds(is, "nullable"));
    report(place, "further values", beyond(was.path("enum"), is.path("enum")));
  }

  private void report(String place, String what, boolean broken) {
    if (broken) {
      found.add(place + ": " + what);
    }
  }

  /** What a place stands in: a field in its group or body, a parameter in its operation. */
  private static String parent(String place) {
    int last = place.lastIndexOf(' ');
    String name = place.substring(last + 1);
    boolean field = !name.startsWith("?") && !name.contains("/") && name.contains(".");
    int cut = field ? place.lastIndexOf('.') : last;
    return cut < 0 ? "" : place.substring(0, cut);
  }

  private static boolean holds(JsonNode facts, String fact) {
    return facts.path(fact).asBoolean();
  }

  /** Whether there are values beyond those listed as possible; no list means any. */
  private static boolean beyond(JsonNode possible, JsonNode values) {
    return possible.isArray()
        && (values.isMissingNode() || !set(possible).containsAll(set(values)));
  }

  private static Set<String> set(JsonNode values) {
    Set<String> set = new TreeSet<>();
    values.forEach(value -> set.add(value.asText()));
    return set;
  }

  private static boolean raised(JsonNode was, JsonNode is, String fact) {
    return is.path(fact).asInt() > was.path(fact).asInt();
  }

  private static boolean lowered(JsonNode was, JsonNode is, String fact) {
    return is.has(fact) && is.get(fact).asInt() < was.path(fact).asInt(Integer.MAX_VALUE);
  }

  /** Whether a bound, named without its first letter, moved in a direction or now excludes itself. */
  private static boolean tightened(JsonNode was, JsonNode is, String bound, int direction) {
    String fact = "m" + bound;
    if (!was.has(fact) || !is.has(fact)) {
      return is.has(fact);
    }
    BigDecimal old = new BigDecimal(was.get(fact).asText());
    int change = new BigDecimal(is.get(fact).asText()).compareTo(old);
    String exclusive = "exclusiveM" + bound;
    boolean excluded = holds(is, exclusive) && !holds(was, exclusive);
    return Integer.signum(change) == direction || (change == 0 && excluded);
  }
}
