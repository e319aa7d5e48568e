package org.footwell.calculation;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads the single values of a record in order, each group within it once, and holds every number
 * against being finite on the way.
 */
final class RowValues {

  /** A component that is a value or a group of them; or a list, which is only looked through. */
  private record Part(Node.Member member, RowValues group, Node.Repeated list) {}

  private final List<Part> parts = new ArrayList<>();
  private final int size;

  RowValues(Node.Group group) {
    int count = 0;
    for (Node.Member member : group.members().values()) {
      if (member.node() instanceof Node.Group inner) {
        RowValues values = new RowValues(inner);
        parts.add(new Part(member, values, null));
        count += values.size;
      } else if (member.node() instanceof Node.Scalar) {
        parts.add(new Part(member, null, null));
        count++;
      } else if (group.numeric().contains(member)) {
        parts.add(new Part(member, null, (Node.Repeated) member.node()));
      }
    }
    size = count;
  }

  /** The values in the order of {@link Shape#columns}, lists left out. */
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
    for (Part part : parts) {
      Object value = part.member().of(record);
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
