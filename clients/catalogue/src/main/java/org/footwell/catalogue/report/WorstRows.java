package org.footwell.catalogue.report;

import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Level;

/** The worst rows so far, a limited number of them. */
final class WorstRows {

  /** By verdict, then by how many findings of that level, then by line. */
  private static final Comparator<CheckedRow> WORST_FIRST =
      Comparator.comparing(CheckedRow::verdict)
          .thenComparing(
              row -> row.remarks().stream().filter(r -> r.level() == row.verdict()).count())
          .reversed()
          .thenComparing(CheckedRow::line);

  private final int most;
  private final TreeSet<CheckedRow> rows = new TreeSet<>(WORST_FIRST);

  WorstRows(int most) {
    this.most = most;
  }

  void add(CheckedRow row) {
    if (row.verdict().atLeast(Level.NOTE)) {
      rows.add(row);
      if (rows.size() > most) {
        rows.pollLast();
      }
    }
  }

  List<CheckedRow> worstFirst() {
    return List.copyOf(rows);
  }
}
