package org.footwell.calculation;

import java.lang.reflect.Constructor;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.rule.Rule;
import org.footwell.calculation.text.Names;

/**
 * A rule with a logic of its own, ready to be held against a record.
 *
 * @param parts the ways to what it is held against; none where that is the record itself
 * @param about below each of them what it reads; none where it reads all there is
 */
record OwnRule(
    String kind,
    List<String> fields,
    String sentence,
    List<FieldPath> parts,
    List<FieldPath> about,
    Check<Object> check)
    implements Rule {

  /**
   * Those beside a record or a calculation, after them those of what it implements.
   *
   * @param members of the record they are held against
   * @throws IllegalArgumentException if one names a field that is not there
   */
  static List<OwnRule> of(Class<?> declaring, Map<String, Node.Member> members) {
    List<OwnRule> rules = new ArrayList<>();
    for (Keeps one : declaring.getAnnotationsByType(Keeps.class)) {
      rules.add(of(one, members));
    }
    for (Class<?> form : declaring.getInterfaces()) {
      rules.addAll(of(form, members));
    }
    return rules;
  }

  private static OwnRule of(Keeps declared, Map<String, Node.Member> members) {
    Check.Of stated = declared.value().getAnnotation(Check.Of.class);
    List<String> parts = List.of(declared.of());
    List<String> about = List.of(stated.value());
    List<String> fields = fields(parts, about);
    List<FieldPath> ways = DeclaredRules.ways(members, fields);
    int above = parts.isEmpty() ? 0 : parts.get(0).split("\\.", -1).length;
    return new OwnRule(
        kind(declared.value().getSimpleName()),
        fields.isEmpty() ? List.copyOf(members.keySet()) : fields,
        parts.isEmpty() ? stated.says() : String.join(", ", parts) + ": " + stated.says(),
        DeclaredRules.ways(members, parts),
        ways.stream().limit(about.size()).map(way -> way.below(above)).toList(),
        made(declared.value()));
  }

  private static String kind(String simpleName) {
    return Names.snake(Character.toLowerCase(simpleName.charAt(0)) + simpleName.substring(1));
  }

  private static List<String> fields(List<String> parts, List<String> about) {
    if (parts.isEmpty() || about.isEmpty()) {
      return parts.isEmpty() ? about : parts;
    }
    return parts.stream().flatMap(part -> about.stream().map(field -> part + "." + field)).toList();
  }

  @SuppressWarnings("unchecked") // a check is declared for parts that it can be held against
  private static Check<Object> made(Class<? extends Check<?>> own) {
    try {
      Constructor<?> constructor = own.getDeclaredConstructor();
      constructor.setAccessible(true);
      return (Check<Object>) constructor.newInstance();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(own + " has no constructor without arguments", e);
    }
  }

  /** Adds a fault for whatever breaks the rule in each part of which all that it asks could be read. */
  void check(Object record, FaultyPlaces faulty, Faults faults) {
    if (parts.isEmpty()) {
      part(record, faulty, faults);
      return;
    }
    for (int i = 0; i < parts.size(); i++) {
      FieldPath way = parts.get(i);
      if (way.pointer() != null && faulty.none()) {
        Object part = way.value(record);
        if (part != null) {
          check.check(part, code -> faults.add(code, faulty.above() + way.pointer()));
        }
        continue;
      }
      for (Rule.Place place : way.in(record)) {
        if (place.given()) {
          part(place.value(), faulty.in(place.pointer()), faults);
        }
      }
    }
  }

  private void part(Object part, FaultyPlaces faulty, Faults faults) {
    if (faulty.none() || (!faulty.at("") && allRead(faulty.below()))) {
      check.check(part, code -> faults.add(code, faulty.above()));
    }
  }

  private boolean allRead(List<String> faulty) {
    return about.isEmpty()
        ? faulty.isEmpty()
        : faulty.stream().noneMatch(place -> about.stream().anyMatch(way -> way.touches(place)));
  }
}
