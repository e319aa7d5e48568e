package org.footwell.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reads what of a record fits into cells, in order, each group within it once, and holds every number
 * against being finite on the way.
 */
final class RowValues {

  /**
   * A component that is a value or a group of them, or a list of names or texts, which is one cell;
   * or another list, which is only looked through.
   */
  private record Part(Node.Member member, RowValues group, Node.Repeated list) {}

  private final RecordAccess access;
  private final List<Part> parts = new ArrayList<>();
  private final int size;

  RowValues(Node.Group group) {
    access = group.access();
    int count = 0;
    for (Node.Member member : group.members().values()) {
      if (member.node() instanceof Node.Group inner) {
        RowValues values = new RowValues(inner);
        parts.add(new Part(member, values, null));
        count += values.size;
      } else if (member.node() instanceof Node.Scalar || isWords(member.node())) {
        parts.add(new Part(member, null, null));
        count++;
      } else if (Node.Group.isNumeric(member.node())) {
        parts.add(new Part(member, null, (Node.Repeated) member.node()));
      }
    }
    size = count;
  }

  /** Whether it is a list of names or texts. */
  private static boolean isWords(Node node) {
    return node instanceof Node.Repeated list
        && list.element() instanceof Node.Scalar single
        && (single.type() == String.class || single.type().isEnum());
  }

  /** Names of the values in their order, dotted. */
  List<String> names() {
    return parts.stream()
        .filter(part -> part.list() == null)
        .flatMap(
            part ->
                part.group() == null
                    ? Stream.of(part.member().name())
                    : part.group().names().stream().map(name -> part.member().name() + "." + name))
        .toList();
  }

  /** The values in the order of {@link Shape#cells}. */
  Object[] of(Record record, Faults faults) {
    Object[] values = new Object[size];
    read(record, values, 0, faults);
    return values;
  }

  /** Index after the last value put; where there is no record all are null. */
  private int read(Object record, Object[] into, int from, Faults faults) {
    if (record == null) {
      return from + size;
    }
    int at = from;
    Object[] components = access.all(record);
    for (Part part : parts) {
      Object value = components[part.member().read().at()];
      if (part.group() != null) {
        at = part.group().read(value, into, at, faults);
      } else if (part.list() == null) {
        into[at++] = value;
        if (value instanceof Double number) {
          Shape.requireFinite(part.member(), number, faults);
        }
      } else if (value != null) {
        Shape.requireFinite(part.member(), part.list().element(), (List<?>) value, faults);
      }
    }
    return at;
  }
}
