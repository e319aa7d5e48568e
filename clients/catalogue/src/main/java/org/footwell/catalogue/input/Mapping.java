package org.footwell.catalogue.input;

import java.util.Map;
import java.util.Set;

/**
 * How the columns of a catalogue become fields of the contract.
 *
 * @param partColumn the column with the part number, or null for {@code part_id}
 * @param renamed their name by ours
 * @param ignored columns that are left out
 * @param constants fields that are the same for every row unless the row has its own
 */
public record Mapping(
    String partColumn,
    Map<String, String> renamed,
    Set<String> ignored,
    Map<String, String> constants) {

  /** The field that names a record. */
  static final String PART_FIELD = "part_id";

  /** What a column of theirs is called here. */
  String ours(String theirs) {
    return renamed.entrySet().stream()
        .filter(entry -> entry.getValue().equals(theirs))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(theirs);
  }
}
