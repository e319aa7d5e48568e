package org.footwell.calculation;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Moves JSON Pointers of a nested request to where its numbers stand in the outer one: what a part of it
 * was built from has its fields under the same names, and only what is called otherwise there is said
 * one by one. The nearest prefix decides; what has no place of its own lands at {@code root}.
 */
public final class Rebase {

  /** For a request that is within no other. */
  static final Rebase NOWHERE = new Rebase("", null);

  private final String root;
  private final String subject;
  private final Map<String, String> moved = new LinkedHashMap<>();
  private final Map<String, List<String>> builtFrom = new LinkedHashMap<>();
  private final Set<FindingCode> left = new HashSet<>();

  private Rebase(String root, String subject) {
    this.root = root;
    this.subject = subject;
  }

  /**
   * What the nested request is about, as a whole.
   *
   * @param root where everything lands that has no place of its own
   * @param subject what a person calls it, such as the name of a channel
   */
  public static Rebase to(String root, String subject) {
    return new Rebase(root, subject);
  }

  /** Leaves out findings that the outer calculation judges on the whole. */
  public Rebase without(FindingCode... judgedOnTheWhole) {
    left.addAll(List.of(judgedOnTheWhole));
    return this;
  }

  /**
   * What the part of the nested request at {@code nested} was built from, the main place first: a field
   * of it stands under the same name in the first of these places that has one, or else at the main one.
   */
  public Rebase from(String nested, String... places) {
    builtFrom.put(nested, List.of(places));
    return this;
  }

  /** Sends {@code nested} and all below it to {@code outer}, where it is called otherwise. */
  public Rebase with(String nested, String outer) {
    moved.put(nested, outer);
    return this;
  }

  /** Whether every place named here exists, as stated and as found. */
  boolean leadsFrom(Shape<?> nested, Shape<?> outer) {
    require(outer, root);
    moved.forEach(
        (from, to) -> {
          require(nested, from);
          require(outer, to);
        });
    builtFrom.forEach(
        (part, places) -> {
          require(nested, part);
          places.forEach(place -> require(outer, place));
        });
    return true;
  }

  private static void require(Shape<?> shape, String pointer) {
    if (!shape.leadsTo(pointer)) {
      throw new AssertionError(pointer + " leads nowhere");
    }
  }

  boolean leaves(FindingCode code) {
    return left.contains(code);
  }

  String subject() {
    return subject;
  }

  /** The place in the outer request for one in the nested. */
  String pointer(String nested, Shape<?> outer) {
    String prefix = nested;
    while (true) {
      String rest = nested.substring(prefix.length());
      String to = moved.get(prefix);
      if (to != null) {
        return to + rest;
      }
      List<String> places = builtFrom.getOrDefault(prefix, List.of());
      for (String place : places) {
        String found = outer.deepest(place, rest);
        if (found.length() > place.length()) {
          return found;
        }
      }
      if (!prefix.isEmpty() && !places.isEmpty()) {
        return places.get(0);
      }
      if (prefix.isEmpty()) {
        return root;
      }
      prefix = parent(prefix);
    }
  }

  private static String parent(String pointer) {
    return pointer.substring(0, pointer.lastIndexOf('/'));
  }
}
