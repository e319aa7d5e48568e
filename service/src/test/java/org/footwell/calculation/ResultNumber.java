package org.footwell.calculation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A number of a record.
 *
 * @param owner the record whose field it is
 * @param kind the dotted path to it with {@code *} for every index
 */
record ResultNumber(Class<?> owner, String name, String kind, double value) {

  /** The field it is, as declarations name it after their package. */
  String field() {
    return field(owner, name);
  }

  private static String field(Class<?> owner, String name) {
    return owner.getName().replace('$', '.') + "." + name;
  }

  /** A path with a star for every index. */
  static String kind(String path) {
    return path.replaceAll("\\.\\d+(?=\\.|$)", ".*");
  }

  /** All numbers of a record. */
  static List<ResultNumber> of(Record record) {
    List<ResultNumber> all = new ArrayList<>();
    collect(Shape.of(record.getClass()).root(), record, "", all);
    return all;
  }

  private static void collect(
      Node.Group group, Object record, String kind, List<ResultNumber> into) {
    for (Node.Member member : group.members().values()) {
      collect(member.node(), member.of(record), group, member.name(), kind + member.name(), into);
    }
  }

  private static void collect(
      Node node,
      Object value,
      Node.Group owner,
      String name,
      String kind,
      List<ResultNumber> into) {
    if (value instanceof Number number) {
      into.add(new ResultNumber(owner.type(), name, kind, number.doubleValue()));
    } else if (node instanceof Node.Group group && value != null) {
      collect(group, value, kind + ".", into);
    } else if (node instanceof Node.Repeated list && value != null) {
      for (Object entry : (List<?>) value) {
        collect(list.element(), entry, owner, name, kind + ".*", into);
      }
    }
  }

  /** The fields of a record and of those in it that are numbers. */
  static Set<String> fields(Class<? extends Record> record) {
    Set<String> fields = new HashSet<>();
    collect(Shape.of(record).root(), fields);
    return fields;
  }

  @SuppressWarnings("unchecked") // results of calculations are records
  static Set<String> fieldsOf(Object result) {
    return fields((Class<? extends Record>) result.getClass());
  }

  private static void collect(Node.Group group, Set<String> into) {
    group
        .members()
        .forEach(
            (name, member) -> {
              Node node = member.node();
              while (node instanceof Node.Repeated list) {
                node = list.element();
              }
              if (node instanceof Node.Group inner) {
                collect(inner, into);
              } else if (((Node.Scalar) node).isNumber()) {
                into.add(field(group.type(), name));
              }
            });
  }
}
