package org.footwell.catalogue.report;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Counted;
import org.footwell.catalogue.row.Level;
import org.footwell.catalogue.row.Remark;

/** What a person reads: counts, what was found how often, and the worst rows in sentences. */
public final class Summary implements Report {

  private final PrintWriter out;
  private final Level failFrom;
  private final WorstRows worst;

  /**
   * Begins the summary.
   *
   * @param failFrom the lowest level that makes the check fail
   * @param worst how many rows are shown
   */
  public Summary(PrintWriter out, Level failFrom, int worst) {
    this.out = out;
    this.failFrom = failFrom;
    this.worst = new WorstRows(worst);
  }

  @Override
  public void add(CheckedRow row) {
    worst.add(row);
  }

  @Override
  public void finish(Tally tally) {
    out.println(
        tally.catalogue() + ": " + Counted.of(tally.rows(), "row") + ": " + tally.verdicts());
    tally.notes().forEach(out::println);
    counts(tally.counts());
    rows(tally);
    if (!tally.cautions().isEmpty()) {
      out.println();
      out.println("safety");
      tally.cautions().forEach(caution -> out.println(Wrapped.after("  - ", caution)));
    }
    long failing = tally.rowsFrom(failFrom);
    out.println();
    out.println(
        failing == 0
            ? "Clean: no row with a " + orWorse() + "."
            : "Not clean: "
                + failing
                + " of "
                + Counted.of(tally.rows(), "row")
                + " with a "
                + orWorse()
                + ".");
    out.flush();
  }

  private String orWorse() {
    return failFrom == Level.STOP ? "stop" : failFrom + " or worse";
  }

  private void counts(List<Tally.Count> counts) {
    if (counts.isEmpty()) {
      return;
    }
    out.println();
    out.println("findings");
    int width = counts.stream().mapToInt(count -> count.code().length()).max().orElseThrow();
    for (Tally.Count count : counts) {
      out.printf(
          Locale.ROOT,
          "  %-7s  %-" + width + "s  %7d  %s%n",
          count.level(),
          count.code(),
          count.times(),
          RuleTexts.of(count.code()));
    }
  }

  private void rows(Tally tally) {
    List<CheckedRow> rows = worst.worstFirst();
    if (rows.isEmpty()) {
      return;
    }
    long found = tally.rowsFrom(Level.NOTE);
    out.println();
    out.println(
        rows.size() == found
            ? "rows, worst first"
            : "the worst " + rows.size() + " of " + Counted.of(found, "row"));
    for (CheckedRow row : rows) {
      out.println("  " + row.name() + (row.part() == null ? "" : ", line " + row.line()));
      for (Remark remark : row.remarks()) {
        out.println(Wrapped.after("    " + remark.level() + ": ", remark.text()));
      }
    }
  }
}
