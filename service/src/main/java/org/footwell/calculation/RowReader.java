package org.footwell.calculation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Reads requests from rows whose columns are known beforehand, straight into the record. It knows
 * only good rows: for a faulty one the slower {@link Shape#bind} tells every fault.
 *
 * @param <T> the record
 */
public final class RowReader<T extends Record> {

  /** What a part of the record is made of. */
  private interface Slot {

    /** The value, null where no cell of it is filled, or {@link #FAULTY}. */
    Object read(Row row);
  }

  private static final Object FAULTY = new Object();
  private static final Slot NOTHING = row -> null;

  private final Slot root;

  /**
   * Prepares for columns.
   *
   * @param paths for each column the parts of its dotted path, or null where it is not read
   */
  RowReader(Node.Group group, List<List<String>> paths) {
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < paths.size(); i++) {
      if (paths.get(i) != null) {
        columns.add(new Column(i, paths.get(i), 0));
      }
    }
    Slot slot = slot(group, columns);
    // A row without any cell is a request without any field.
    root =
        row -> {
          Object read = slot.read(row);
          return read == null ? group.construct(new Object[group.members().size()]) : read;
        };
  }

  /** A column seen from some depth of its path. */
  private record Column(int index, List<String> path, int depth) {
    String name() {
      return path.get(depth);
    }

    Column below() {
      return new Column(index, path, depth + 1);
    }
  }

  /** The request of a row, or null if a cell of it is faulty. */
  @SuppressWarnings("unchecked") // the root group constructs T
  public T read(Row row) {
    Object read = root.read(row);
    return read == FAULTY ? null : (T) read;
  }

  private static Slot slot(Node node, List<Column> columns) {
    if (columns.isEmpty()) {
      return NOTHING;
    }
    if (node instanceof Node.Scalar scalar) {
      int index = columns.get(0).index();
      return row -> {
        if (row.length(index) == 0) {
          return null;
        }
        Object value = Cell.value(scalar, row, index);
        return value == null ? FAULTY : value;
      };
    }
    Map<String, List<Column>> byName =
        columns.stream()
            .collect(
                Collectors.groupingBy(
                    Column::name,
                    TreeMap::new,
                    Collectors.mapping(Column::below, Collectors.toList())));
    return node instanceof Node.Group group
        ? group(group, byName)
        : list((Node.Repeated) node, byName);
  }

  private static Slot group(Node.Group group, Map<String, List<Column>> byName) {
    int components = group.members().size();
    // Most components of most groups have no column.
    List<Node.Member> given =
        group.members().values().stream()
            .filter(member -> byName.containsKey(member.name()))
            .toList();
    int[] places = given.stream().mapToInt(member -> member.read().at()).toArray();
    Slot[] slots =
        given.stream()
            .map(member -> slot(member.node(), byName.get(member.name())))
            .toArray(Slot[]::new);
    return row -> {
      Object[] values = new Object[components];
      boolean filled = false;
      for (int i = 0; i < slots.length; i++) {
        Object value = slots[i].read(row);
        if (value == FAULTY) {
          return FAULTY;
        }
        values[places[i]] = value;
        filled |= value != null;
      }
      return filled ? group.construct(values) : null;
    };
  }

  /** Entries from 0 without a gap. */
  private static Slot list(Node.Repeated repeated, Map<String, List<Column>> byName) {
    Slot[] slots = new Slot[byName.size()];
    Arrays.setAll(
        slots, i -> slot(repeated.element(), byName.getOrDefault(Integer.toString(i), List.of())));
    boolean gap = Arrays.asList(slots).contains(NOTHING) || slots.length > repeated.most();
    return row -> {
      List<Object> entries = new ArrayList<>(slots.length);
      boolean ended = false;
      for (Slot slot : slots) {
        Object entry = slot.read(row);
        if (entry == FAULTY || (entry != null && ended)) {
          return FAULTY;
        }
        ended |= entry == null;
        if (entry != null) {
          entries.add(entry);
        }
      }
      return gap ? FAULTY : entries.isEmpty() ? null : entries;
    };
  }
}
