package org.footwell.calculation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.footwell.calculation.text.Names;

/**
 * Finds single values of a record by the paths that callers write: dotted, or as a JSON Pointer. An
 * entry of a list is told by its index or by what names it, as in {@code drivers.sub_left.re_ohm}.
 */
final class PathFinder {

  private static final Pattern INDEX = Pattern.compile("\\d{1,9}");

  /** What names an entry in a path without being taken for an index or for several parts. */
  private static final Pattern NAME = Pattern.compile("[\\w-]*[\\D&&[\\w-]][\\w-]*");

  /** Names of fields that tell one entry of a list from another. */
  private static final List<String> NAMING = List.of("id", "name");

  private final Node.Group root;

  /** A request as it was sent, or null: of a result it is not known how long its lists are. */
  private final Object document;

  private PathFinder(Node.Group root, Object document) {
    this.root = root;
    this.document = document;
  }

  static Place inRequest(Node.Group root, String path, Map<?, ?> document) throws UnknownPath {
    return new PathFinder(root, document).place(path);
  }

  static Place inResult(Node.Group root, String path) throws UnknownPath {
    return new PathFinder(root, null).place(path);
  }

  /** Dotted paths to the numbers a request states. */
  static List<String> numbers(Node.Group root, Map<?, ?> document) {
    List<String> paths = new ArrayList<>();
    numbers(root, document, "", paths);
    return paths;
  }

  private static void numbers(Node node, Object given, String path, List<String> into) {
    if (node instanceof Node.Group group && given instanceof Map<?, ?> fields) {
      group
          .members()
          .forEach(
              (name, member) -> numbers(member.node(), fields.get(name), path + "." + name, into));
    } else if (node instanceof Node.Repeated list && given instanceof List<?> entries) {
      for (int i = 0; i < entries.size(); i++) {
        numbers(list.element(), entries.get(i), path + "." + called(list, entries, i), into);
      }
    } else if (node instanceof Node.Scalar single && single.isNumber() && given instanceof Number) {
      into.add(path.substring(1));
    }
  }

  /** What tells an entry from the others of its list: its name where that fits into a path, or its index. */
  private static String called(Node.Repeated list, List<?> entries, int index) {
    Node.Member naming = naming(list);
    boolean named =
        naming != null
            && entries.get(index) instanceof Map<?, ?> entry
            && entry.get(naming.name()) instanceof String name
            && NAME.matcher(name).matches()
            && named(list, entries, name) == index;
    return named ? (String) ((Map<?, ?>) entries.get(index)).get(naming.name()) : "" + index;
  }

  static String dotted(String pointer) {
    return String.join(".", parts(pointer));
  }

  private static List<String> parts(String path) {
    return path.startsWith("/")
        ? Pattern.compile("/")
            .splitAsStream(path.substring(1))
            .map(part -> part.replace("~1", "/").replace("~0", "~"))
            .toList()
        : List.of(path.split("\\.", -1));
  }

  private Place place(String path) throws UnknownPath {
    List<String> parts = parts(path);
    return follow(parts).orElseThrow(() -> new UnknownPath(nearest(parts)));
  }

  private Optional<Place> follow(List<String> parts) {
    StringBuilder pointer = new StringBuilder();
    List<Place.Step> steps = new ArrayList<>();
    Node here = root;
    Node.Member field = null;
    Object given = document;
    for (String part : parts) {
      String at = part;
      if (here instanceof Node.Group group && group.members().containsKey(part)) {
        field = group.members().get(part);
        steps.add(field::of);
        here = field.node();
        given = given instanceof Map<?, ?> fields ? fields.get(part) : null;
      } else if (here instanceof Node.Repeated list) {
        int index = INDEX.matcher(part).matches() ? Integer.parseInt(part) : -1;
        index = index < 0 && document != null ? named(list, given, part) : index;
        Place.Step step = index < 0 ? byName(list, part) : byIndex(index);
        if (step == null || !mayHold(list, given, index)) {
          return Optional.empty();
        }
        steps.add(step);
        at = index < 0 ? part : Integer.toString(index);
        given = document == null ? null : ((List<?>) given).get(index);
        here = list.element();
      } else {
        return Optional.empty();
      }
      pointer.append('/').append(at.replace("~", "~0").replace("/", "~1"));
    }
    return here instanceof Node.Scalar single && single.isSingle()
        ? Optional.of(new Place(pointer.toString(), steps, single, field))
        : Optional.empty();
  }

  private boolean mayHold(Node.Repeated list, Object given, int index) {
    return document == null
        ? index < list.most()
        : index >= 0 && given instanceof List<?> entries && index < entries.size();
  }

  /** Index of the entry of a request that has a name, or -1. */
  private static int named(Node.Repeated list, Object given, String name) {
    Node.Member naming = naming(list);
    if (naming != null && given instanceof List<?> entries) {
      for (int i = 0; i < entries.size(); i++) {
        if (entries.get(i) instanceof Map<?, ?> entry && name.equals(entry.get(naming.name()))) {
          return i;
        }
      }
    }
    return -1;
  }

  private static Place.Step byIndex(int index) {
    return here -> index < ((List<?>) here).size() ? ((List<?>) here).get(index) : null;
  }

  private static Place.Step byName(Node.Repeated list, String name) {
    Node.Member naming = naming(list);
    return naming == null
        ? null
        : here ->
            ((List<?>) here)
                .stream()
                    .filter(entry -> name.equals(nameOf(entry, naming)))
                    .findFirst()
                    .orElse(null);
  }

  private static String nameOf(Object entry, Node.Member naming) {
    Object name = naming.of(entry);
    return name instanceof Enum<?> constant ? Names.of(constant) : (String) name;
  }

  /** What tells the entries of a list apart: their id or name, or else what stands first in them. */
  private static Node.Member naming(Node.Repeated list) {
    if (!(list.element() instanceof Node.Group group)) {
      return null;
    }
    for (String name : NAMING) {
      if (isWord(group.members().get(name))) {
        return group.members().get(name);
      }
    }
    Node.Member first = group.members().values().iterator().next();
    return isWord(first) ? first : null;
  }

  private static boolean isWord(Node.Member member) {
    return member != null
        && member.node() instanceof Node.Scalar single
        && (single.type() == String.class || single.type().isEnum());
  }

  /**
   * The path most like a wrong one: one below it, one that it is the end of, one with few letters
   * changed, one whose field is called alike; a number before anything else.
   */
  private String nearest(List<String> wrong) {
    Set<String> all = new LinkedHashSet<>();
    collect(root, document, "", Node.Scalar::isNumber, all);
    collect(root, document, "", Node.Scalar::isSingle, all);
    String path = String.join(".", wrong);
    String last = wrong.get(wrong.size() - 1);
    return all.stream()
        .filter(one -> one.startsWith(path + ".") || one.endsWith("." + path))
        .findFirst()
        .or(() -> Names.nearest(path, all))
        .or(() -> endingIn(last, all))
        .orElse(null);
  }

  private static Optional<String> endingIn(String last, Set<String> all) {
    List<String> ends = all.stream().map(one -> one.substring(one.lastIndexOf('.') + 1)).toList();
    return Names.nearest(last, ends)
        .flatMap(
            end ->
                all.stream().filter(one -> one.equals(end) || one.endsWith("." + end)).findFirst());
  }

  private void collect(
      Node node, Object given, String path, Predicate<Node.Scalar> which, Set<String> into) {
    if (node instanceof Node.Group group) {
      for (Node.Member member : group.members().values()) {
        Object below = given instanceof Map<?, ?> fields ? fields.get(member.name()) : null;
        String to = path.isEmpty() ? member.name() : path + "." + member.name();
        collect(member.node(), below, to, which, into);
      }
    } else if (node instanceof Node.Repeated list) {
      entries(list, given, path, which, into);
    } else if (which.test((Node.Scalar) node)) {
      into.add(path);
    }
  }

  private void entries(
      Node.Repeated list,
      Object given,
      String path,
      Predicate<Node.Scalar> which,
      Set<String> into) {
    if (document == null) {
      collect(list.element(), null, path + ".0", which, into);
    } else if (given instanceof List<?> entries) {
      Node.Member naming = naming(list);
      for (int i = 0; i < entries.size(); i++) {
        collect(list.element(), entries.get(i), path + "." + i, which, into);
        if (naming != null
            && entries.get(i) instanceof Map<?, ?> entry
            && entry.get(naming.name()) instanceof String name) {
          collect(list.element(), entries.get(i), path + "." + name, which, into);
        }
      }
    }
  }
}
