package org.footwell.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A tree of texts, as a query makes one, read as JSON would have given it. */
final class CellTree {

  private CellTree() {}

  /**
   * The same with numbers, truth values and lists where the node has them. What is none of the kind stays
   * as it is, for a {@link Binder} to tell.
   */
  static Object typed(Node.Group root, Object given) {
    return typed(root, given, "");
  }

  private static Object typed(Node node, Object given, String of) {
    if (given instanceof String text && node instanceof Node.Scalar scalar) {
      return scalar(scalar, text, of);
    }
    if (!(given instanceof Map<?, ?> map)) {
      return given;
    }
    if (node instanceof Node.Group group) {
      Map<Object, Object> fields = new LinkedHashMap<>();
      map.keySet().forEach(name -> fields.put(name, member(group, name, map)));
      return fields;
    }
    List<?> entries = node instanceof Node.Repeated ? inOrder(map) : null;
    return entries == null
        ? given
        : entries.stream()
            .map(entry -> typed(((Node.Repeated) node).element(), entry, of))
            .toList();
  }

  private static Object member(Node.Group group, Object name, Map<?, ?> fields) {
    Node.Member member = group.members().get(name);
    return member == null
        ? fields.get(name)
        : typed(member.node(), fields.get(name), quantity(member, fields));
  }

  /** Path of the quantity that a member is one of: its own name, or what a field beside it says. */
  static String quantity(Node.Member member, Map<?, ?> fields) {
    return member.inUnitOf() != null && fields.get(member.inUnitOf()) instanceof String path
        ? path
        : member.name();
  }

  private static Object scalar(Node.Scalar scalar, String text, String of) {
    boolean typed = scalar.isSingle() && !scalar.type().isEnum();
    Object value = typed ? Cell.value(scalar, text, of) : null;
    return value == null ? text : value;
  }

  /** Entries of a repeated group in a query, indexed from 0 without a gap; otherwise null. */
  static List<?> inOrder(Map<?, ?> byIndex) {
    List<Object> entries = new ArrayList<>(byIndex.size());
    for (int i = 0; i < byIndex.size(); i++) {
      Object entry = byIndex.get(Integer.toString(i));
      if (entry == null) {
        return null;
      }
      entries.add(entry);
    }
    return entries;
  }
}
