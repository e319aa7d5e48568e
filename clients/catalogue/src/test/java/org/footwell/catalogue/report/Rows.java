package org.footwell.catalogue.report;

import java.io.IOException;
import java.util.List;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Level;
import org.footwell.catalogue.row.Remark;

/** Checked rows made up for tests of reports. */
final class Rows {

  static final Remark STOP =
      new Remark(Level.STOP, "qts-impossible", "qts", "qts of 2 must be smaller than qes of 1.");
  static final Remark WARNING =
      new Remark(Level.WARNING, "implausible", "xmax_mm", "xmax_mm of 90 is unusual.");
  static final Remark NOTE =
      new Remark(Level.NOTE, "not-checked", "", "Not checked for lack of figures: qms.");
  static final Remark REFUSED =
      Remark.refusal("wrong-type", "rated_ohm", "rated_ohm must be a number from 0.5 to 600.");

  private Rows() {}

  static CheckedRow row(long line, String part, Remark... remarks) {
    return new CheckedRow(line, part, List.of(remarks));
  }

  /** Writes a whole report. */
  static void write(Report report, CheckedRow... rows) throws IOException {
    Tally tally = new Tally("drivers.csv");
    try (report) {
      for (CheckedRow row : rows) {
        tally.add(row);
        report.add(row);
      }
      report.finish(tally);
    }
  }
}
