package org.footwell.calculation;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Moves JSON Pointers of a nested request to where its numbers stand in the outer one.
 *
 * <p>Everything lands below {@code root} unless a nearer prefix says otherwise.
 */
public final class Rebase {

  private static final Rebase NOWHERE = new Rebase("", null);

  private final String root;
  private final String subject;
  private final Map<String, String> moved = new LinkedHashMap<>();
  private final Set<FindingCode> left = new HashSet<>();

  private Rebase(String root, String subject) {
    this.root = root;
    this.subject = subject;
  }

  /** Leaves pointers as they are. */
  static Rebase nowhere() {
    return NOWHERE;
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

  /** Sends {@code nested} and all below it to {@code outer}. */
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

  String root() {
    return root;
  }

  String subject() {
    return subject;
  }

  /** The outer pointer for a nested one; the longest known prefix decides. */
  String pointer(String nested) {
    for (String prefix = nested; !prefix.isEmpty(); prefix = parent(prefix)) {
      String outer = moved.get(prefix);
      if (outer != null) {
        return outer + nested.substring(prefix.length());
      }
    }
    return this == NOWHERE ? nested : root;
  }

  private static String parent(String pointer) {
    return pointer.substring(0, pointer.lastIndexOf('/'));
  }
}
