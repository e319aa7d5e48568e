package org.footwell.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.footwell.calculation.rule.Rule;

/**
 * The way from a record down to a field that a rule is about.
 *
 * @param steps the components on the way; null stands for every entry of the list before it
 * @param pointer where the field stands, or null where that is in each entry of a list
 */
record FieldPath(List<String> parts, List<Node.Member> steps, String pointer) {

  private static final String EVERY = "*";

  /**
   * Follows a dotted path down from the components of a record.
   *
   * @throws IllegalArgumentException if there is no such field
   */
  static FieldPath of(Map<String, Node.Member> from, String path) {
    List<String> parts = List.of(path.split("\\.", -1));
    List<Node.Member> steps = new ArrayList<>();
    Map<String, Node.Member> members = from;
    Node here = null;
    for (String part : parts) {
      Node.Member member = members.get(part);
      if (part.equals(EVERY) && here instanceof Node.Repeated list) {
        here = list.element();
      } else if (member != null) {
        here = member.node();
      } else {
        throw new IllegalArgumentException("no field " + path);
      }
      members = here instanceof Node.Group group ? group.members() : Map.of();
      steps.add(member);
    }
    String pointer = parts.contains(EVERY) ? null : "/" + String.join("/", parts);
    return new FieldPath(parts, steps, pointer);
  }

  /** The rest of the way, from so many steps down. */
  FieldPath below(int down) {
    List<String> rest = parts.subList(down, parts.size());
    String there = rest.contains(EVERY) ? null : "/" + String.join("/", rest);
    return new FieldPath(rest, steps.subList(down, steps.size()), there);
  }

  /** Where the field stands in a record: once, or once for each entry of the lists on the way. */
  List<Rule.Place> in(Object record) {
    if (pointer != null) {
      return List.of(single(record));
    }
    List<Rule.Place> places = new ArrayList<>();
    collect(0, record, "", places);
    return places;
  }

  /** What stands there, or null, of a field that stands there once. */
  Object value(Object record) {
    Object here = record;
    for (int i = 0; i < steps.size() && here != null; i++) {
      here = steps.get(i).of(here);
    }
    return here;
  }

  /** Whether nothing stands there though what would hold it does. */
  boolean isMissing(Object record) {
    Object holder = record;
    for (int i = 0; i < steps.size() - 1 && holder != null; i++) {
      holder = steps.get(i).of(holder);
    }
    return holder != null && steps.get(steps.size() - 1).of(holder) == null;
  }

  private Rule.Place single(Object record) {
    Object holder = record;
    Object here = record;
    for (Node.Member step : steps) {
      holder = here;
      here = here == null ? null : step.of(here);
    }
    return new Rule.Place(pointer, here, holder != null, here != null);
  }

  private void collect(int step, Object here, String pointer, List<Rule.Place> into) {
    boolean last = step == parts.size() - 1;
    if (!parts.get(step).equals(EVERY)) {
      Object value = here == null ? null : steps.get(step).of(here);
      next(last, step, value, pointer + "/" + parts.get(step), here != null, into);
    } else if (here != null) {
      List<?> entries = (List<?>) here;
      for (int i = 0; i < entries.size(); i++) {
        next(last, step, entries.get(i), pointer + "/" + i, true, into);
      }
    }
  }

  private void next(
      boolean last, int step, Object value, String pointer, boolean held, List<Rule.Place> into) {
    if (last) {
      into.add(new Rule.Place(pointer, value, held, value != null));
    } else {
      collect(step + 1, value, pointer, into);
    }
  }

  /** Whether a place that is faulty, from the same record, is on the way to the field. */
  boolean leadsThrough(String pointer) {
    return pointer.chars().filter(c -> c == '/').count() < parts.size() && touches(pointer);
  }

  /** The same, or at the field, or below it. */
  boolean touches(String pointer) {
    String[] other = pointer.substring(1).split("/", -1);
    for (int i = 0; i < Math.min(other.length, parts.size()); i++) {
      if (!parts.get(i).equals(EVERY) && !Objects.equals(parts.get(i), other[i])) {
        return false;
      }
    }
    return true;
  }
}
