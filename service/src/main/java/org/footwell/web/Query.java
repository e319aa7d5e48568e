package org.footwell.web;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Names;

/** The query of an address, read strictly: no parameter is overlooked and none is guessed. */
final class Query {

  private static final Set<String> RESERVED = Set.of("format", "field", "errors", "workings");
  private static final int MOST_PARAMETERS = 1_000;

  private final Map<String, String> options = new LinkedHashMap<>();
  private final Map<String, String> fields = new LinkedHashMap<>();

  private Query() {}

  /** Reads a raw query; null is an empty one. */
  static Query of(String raw) {
    Query query = new Query();
    if (raw == null || raw.isEmpty()) {
      return query;
    }
    Faults faults = new Faults();
    String[] pairs = raw.split("&", MOST_PARAMETERS + 1);
    if (pairs.length > MOST_PARAMETERS) {
      throw ProblemException.of(
          ProblemType.UNREADABLE, "More than " + MOST_PARAMETERS + " parameters.");
    }
    for (String pair : pairs) {
      if (!pair.isEmpty()) {
        query.add(pair, faults);
      }
    }
    query.checkOptions(faults);
    refuse(faults);
    return query;
  }

  private void add(String pair, Faults faults) {
    int equals = pair.indexOf('=');
    String name = decode(equals < 0 ? pair : pair.substring(0, equals));
    String value = equals < 0 ? "" : decode(pair.substring(equals + 1));
    Map<String, String> into = RESERVED.contains(name) ? options : fields;
    if (into.put(name, value) != null) {
      faults.add(CoreFault.DUPLICATE).at("/" + name.replace('.', '/')).given(name);
    }
  }

  private void checkOptions(Faults faults) {
    oneOf("errors", List.of("text", "problem"), faults);
    oneOf("workings", List.of("true", "false"), faults);
    oneOf("format", Format.names(), faults);
  }

  private void oneOf(String name, List<String> allowed, Faults faults) {
    String given = options.get(name);
    if (given != null && !allowed.contains(given)) {
      faults
          .add(CoreFault.NOT_ALLOWED)
          .at("/" + name)
          .given(given)
          .allowed("one of " + String.join(", ", allowed));
    }
  }

  private static void refuse(Faults faults) {
    if (!faults.none()) {
      throw ProblemException.invalid(faults.list());
    }
  }

  /** Refuses every parameter that is not an option, as on a POST. */
  void requireNoFields() {
    Faults faults = new Faults();
    for (String name : fields.keySet()) {
      faults
          .add(CoreFault.UNKNOWN_FIELD)
          .at("/" + name)
          .given(name)
          .allowed(String.join(", ", RESERVED.stream().sorted().toList()))
          .with(
              "nearest",
              Names.nearest(name, RESERVED).map(near -> " Did you mean " + near + "?").orElse(""));
    }
    refuse(faults);
  }

  /** The fields as a tree: {@code coils.0.rated_ohm=4} becomes coils → 0 → rated_ohm → 4. */
  Map<String, Object> tree() {
    Map<String, Object> root = new LinkedHashMap<>();
    Faults faults = new Faults();
    fields.forEach(
        (name, value) -> {
          if (!put(root, name.split("\\.", -1), value)) {
            faults
                .add(CoreFault.WRONG_TYPE)
                .at("/" + name.replace('.', '/'))
                .given(value)
                .allowed("either a value or a group, not both");
          }
        });
    refuse(faults);
    return root;
  }

  @SuppressWarnings("unchecked") // every map in the tree was put there below
  static boolean put(Map<String, Object> root, String[] path, String value) {
    Map<String, Object> here = root;
    for (int i = 0; i < path.length - 1; i++) {
      Object next = here.computeIfAbsent(path[i], name -> new LinkedHashMap<String, Object>());
      if (!(next instanceof Map)) {
        return false;
      }
      here = (Map<String, Object>) next;
    }
    return here.putIfAbsent(path[path.length - 1], value) == null;
  }

  /** Takes a parameter of one operation out of the fields; null when it is not given. */
  String take(String name, List<String> allowed) {
    String given = fields.remove(name);
    if (given != null) {
      options.put(name, given);
      Faults faults = new Faults();
      oneOf(name, allowed, faults);
      refuse(faults);
    }
    return given;
  }

  String option(String name) {
    return options.get(name);
  }

  boolean workings() {
    return "true".equals(options.get("workings"));
  }

  /** Whether the raw query asks for problems as text; looks before anything is checked. */
  static boolean asksForTextErrors(String raw) {
    return raw != null && ("&" + raw + "&").contains("&errors=text&");
  }

  private static String decode(String text) {
    try {
      return URLDecoder.decode(text, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException brokenEscape) {
      throw ProblemException.of(
          ProblemType.UNREADABLE, "A % in the address must be followed by two hex digits.");
    }
  }
}
