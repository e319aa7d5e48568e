package org.footwell.calculation;

import java.util.ArrayList;
import java.util.List;

/** Reads the single values of a record in order, each group within it once. */
public final class RowValues {

  /** A component that is a value, or a group of them. */
  private record Part(Node.Member member, RowValues group) {}

  private final List<Part> parts = new ArrayList<>();
  private final int size;

  RowValues(Node.Group group) {
    for (Node.Member member : group.members().values()) {
      if (member.node() instanceof Node.Group inner) {
        parts.add(new Part(member, new RowValues(inner)));
      } else if (member.node() instanceof Node.Scalar) {
        parts.add(new Part(member, null));
      }
    }
    size = parts.stream().mapToInt(part -> part.group() == null ? 1 : part.group().size()).sum();
  }

  /** How many values there are. */
  public int size() {
    return size;
  }

  /**
   * Puts the values of a record where they belong.
   *
   * @param record the record, or null: all its values are null then
   * @param into takes them in the order of {@link Shape#columns}, lists left out
   * @param from index of the first
   * @return index after the last
   */
  public int read(Object record, Object[] into, int from) {
    int at = from;
    for (Part part : parts) {
      Object value = record == null ? null : part.member().of(record);
      if (part.group() == null) {
        into[at++] = value;
      } else {
        at = part.group().read(value, into, at);
      }
    }
    return at;
  }
}
