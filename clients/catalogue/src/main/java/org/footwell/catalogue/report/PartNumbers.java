package org.footwell.catalogue.report;

import java.util.ArrayList;
import java.util.List;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Counted;

/** Rows whose part number is missing or was there before. */
final class PartNumbers {

  private final SeenNames seen = new SeenNames();
  private long missing;
  private long repeated;
  private long firstRepeated;

  void add(CheckedRow row) {
    if (row.part() == null) {
      missing++;
    } else if (!seen.add(row.part())) {
      firstRepeated = repeated == 0 ? row.line() : firstRepeated;
      repeated++;
    }
  }

  /** In sentences; none where every row has one of its own. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (missing > 0) {
      notes.add(Counted.of(missing, "row") + " without a part number, which no baseline knows.");
    }
    if (repeated > 0) {
      String rows = Counted.of(repeated, "row");
      notes.add(
          rows + " with the part number of an earlier one, first in line " + firstRepeated + ".");
    }
    return notes;
  }
}
