package org.footwell.openapi;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.media.Schema;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Breaks between two schemas of one place: a request takes less, an answer promises less. */
final class SchemaBreaks {

  private static final String REFERENCE = "#/components/schemas/";

  private enum Side {
    REQUEST,
    ANSWER
  }

  private final OpenAPI before;
  private final OpenAPI after;
  private final Set<List<Object>> compared = new HashSet<>();
  private final Set<String> found = new LinkedHashSet<>();

  SchemaBreaks(OpenAPI before, OpenAPI after) {
    this.before = before;
    this.after = after;
  }

  Set<String> found() {
    return found;
  }

  void request(String place, Schema<?> old, Schema<?> now) {
    compare(place, old, now, Side.REQUEST);
  }

  void answer(String place, Schema<?> old, Schema<?> now) {
    compare(place, old, now, Side.ANSWER);
  }

  private void compare(String place, Schema<?> old, Schema<?> now, Side side) {
    if (old == null || now == null) {
      report(place, "schema given or taken away", old != null || now != null);
      return;
    }
    // A shared schema is told once, at its first place; one within itself would never end.
    if (old.get$ref() != null && !compared.add(List.of(side, old.get$ref(), reference(now)))) {
      return;
    }
    Schema<?> was = resolved(before, old);
    Schema<?> is = resolved(after, now);
    if (side == Side.REQUEST) {
      narrowed(place, was, is);
    } else {
      weakened(place, was, is);
    }
    children(place, was, is, side);
  }

  private void narrowed(String place, Schema<?> was, Schema<?> is) {
    report(place, "type changed", !Objects.equals(was.getType(), is.getType()));
    report(place, "no longer nullable", nullable(was) && !nullable(is));
    report(place, "default changed", !Objects.equals(was.getDefault(), is.getDefault()));
    report(place, "pattern changed", narrowedPattern(was.getPattern(), is.getPattern()));
    report(place, "fewer values", beyond(is.getEnum(), was.getEnum()));
    report(place, "minimum raised", minimumRaised(was, is));
    report(place, "maximum lowered", maximumLowered(was, is));
    report(place, "must be longer", raised(was.getMinLength(), is.getMinLength()));
    report(place, "must be shorter", lowered(was.getMaxLength(), is.getMaxLength()));
    report(place, "must have more entries", raised(was.getMinItems(), is.getMinItems()));
    report(place, "must have fewer entries", lowered(was.getMaxItems(), is.getMaxItems()));
    report(place, "unknown fields now refused", open(was) && !open(is));
    for (String name : orEmpty(is.getRequired())) {
      report(place + "/" + name, "now required", !orEmpty(was.getRequired()).contains(name));
    }
  }

  private void weakened(String place, Schema<?> was, Schema<?> is) {
    report(place, "type changed", !Objects.equals(was.getType(), is.getType()));
    report(place, "now nullable", !nullable(was) && nullable(is));
    report(place, "further values", beyond(was.getEnum(), is.getEnum()));
    for (String name : orEmpty(was.getRequired())) {
      report(place + "/" + name, "may be absent", !orEmpty(is.getRequired()).contains(name));
    }
  }

  private void children(String place, Schema<?> was, Schema<?> is, Side side) {
    Map<String, Schema<?>> now = properties(is);
    properties(was)
        .forEach(
            (name, schema) -> {
              if (now.containsKey(name)) {
                compare(place + "/" + name, schema, now.get(name), side);
              } else {
                report(place + "/" + name, "removed", true);
              }
            });
    if (was.getItems() != null) {
      compare(place + "/*", was.getItems(), is.getItems(), side);
    }
    if (was.getAdditionalProperties() instanceof Schema<?> values
        && is.getAdditionalProperties() instanceof Schema<?> successors) {
      compare(place + "/{name}", values, successors, side);
    }
    alternatives(place, was.getAllOf(), is.getAllOf(), side);
    alternatives(place, was.getOneOf(), is.getOneOf(), side);
    alternatives(place, was.getAnyOf(), is.getAnyOf(), side);
  }

  /** Composed schemas are compared one by one; more or fewer of them is taken for a break. */
  @SuppressWarnings("rawtypes") // the model's own type
  private void alternatives(String place, List<Schema> was, List<Schema> is, Side side) {
    List<Schema> old = orEmpty(was);
    List<Schema> now = orEmpty(is);
    report(place, "composed of other schemas", old.size() != now.size());
    for (int i = 0; i < Math.min(old.size(), now.size()); i++) {
      compare(place, old.get(i), now.get(i), side);
    }
  }

  private void report(String place, String what, boolean broken) {
    if (broken) {
      found.add(place + ": " + what);
    }
  }

  private static String reference(Schema<?> schema) {
    return Objects.requireNonNullElse(schema.get$ref(), "");
  }

  private static Schema<?> resolved(OpenAPI contract, Schema<?> schema) {
    Schema<?> here = schema;
    while (here.get$ref() != null) {
      here =
          contract.getComponents().getSchemas().get(here.get$ref().substring(REFERENCE.length()));
    }
    return here;
  }

  private static Map<String, Schema<?>> properties(Schema<?> schema) {
    Map<String, Schema<?>> typed = new LinkedHashMap<>();
    if (schema.getProperties() != null) {
      schema.getProperties().forEach(typed::put);
    }
    return typed;
  }

  private static boolean nullable(Schema<?> schema) {
    return Boolean.TRUE.equals(schema.getNullable());
  }

  private static boolean open(Schema<?> schema) {
    return !Boolean.FALSE.equals(schema.getAdditionalProperties());
  }

  private static boolean narrowedPattern(String was, String is) {
    return is != null && !is.equals(was);
  }

  /** Whether there are values beyond those listed as possible; no list means any. */
  private static boolean beyond(List<?> possible, List<?> values) {
    return possible != null && (values == null || !possible.containsAll(values));
  }

  private static boolean raised(Integer was, Integer is) {
    return is != null && is > Objects.requireNonNullElse(was, 0);
  }

  private static boolean lowered(Integer was, Integer is) {
    return is != null && (was == null || is < was);
  }

  private static boolean minimumRaised(Schema<?> was, Schema<?> is) {
    boolean excluded = excluded(was.getExclusiveMinimum(), is.getExclusiveMinimum());
    return tightened(was.getMinimum(), is.getMinimum(), 1, excluded);
  }

  private static boolean maximumLowered(Schema<?> was, Schema<?> is) {
    boolean excluded = excluded(was.getExclusiveMaximum(), is.getExclusiveMaximum());
    return tightened(was.getMaximum(), is.getMaximum(), -1, excluded);
  }

  private static boolean excluded(Boolean was, Boolean is) {
    return Boolean.TRUE.equals(is) && !Boolean.TRUE.equals(was);
  }

  private static boolean tightened(BigDecimal was, BigDecimal is, int direction, boolean excluded) {
    if (was == null || is == null) {
      return is != null;
    }
    int change = Integer.signum(is.compareTo(was));
    return change == direction || (change == 0 && excluded);
  }

  private static <T> List<T> orEmpty(List<T> list) {
    return list == null ? List.of() : list;
  }
}
