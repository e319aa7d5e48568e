package org.footwell.catalogue.report;

import static org.footwell.catalogue.report.Rows.NOTE;
import static org.footwell.catalogue.report.Rows.REFUSED;
import static org.footwell.catalogue.report.Rows.STOP;
import static org.footwell.catalogue.report.Rows.WARNING;
import static org.footwell.catalogue.report.Rows.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Level;
import org.junit.jupiter.api.Test;

class SummaryTest {

  private static String summary(Level failFrom, int worst, CheckedRow... rows) throws IOException {
    StringWriter out = new StringWriter();
    Rows.write(new Summary(new PrintWriter(out), failFrom, worst), rows);
    return out.toString();
  }

  @Test
  void aPersonSeesCountsFindingsAndTheWorstRows() throws IOException {
    assertEquals(
        """
        drivers.csv: 5 rows: 2 stop (1 of them refused), 0 warning, 2 note, 1 ok

        findings
          stop     qts-impossible            1  qts is not smaller than qes and qms
          stop     refused-wrong-type        1  A figure is not what its field takes
          warning  implausible               1  A figure is unusual for drivers of this kind
          note     not-checked               2  Some figures could not be checked for lack of others

        the worst 2 of 4 rows
          line 3
            stop: rated_ohm must be a number from 0.5 to 600.
          C, line 4
            stop: qts of 2 must be smaller than qes of 1.
            warning: xmax_mm of 90 is unusual.

        Not clean: 2 of 5 rows with a warning or worse.
        """,
        summary(
            Level.WARNING,
            2,
            row(2, "A"),
            row(3, null, REFUSED),
            row(4, "C", STOP, WARNING),
            row(5, "D", NOTE),
            row(6, "E", NOTE)));
  }

  @Test
  void oneIsNotMany() throws IOException {
    assertEquals(
        """
        drivers.csv: 1 row: 0 stop, 0 warning, 1 note, 0 ok

        findings
          note     not-checked        1  Some figures could not be checked for lack of others

        Not clean: 1 of 1 row with a note or worse.
        """,
        summary(Level.NOTE, 0, row(2, "A", NOTE)));
  }

  @Test
  void rowsAreOrderedByVerdictThenByHowManyOfItThenByLine() throws IOException {
    String text =
        summary(
            Level.STOP,
            9,
            row(2, "A", NOTE, NOTE, NOTE),
            row(3, "B", WARNING),
            row(4, "C", WARNING, WARNING),
            row(5, "D", WARNING));
    assertEquals(
        "CBDA",
        text.lines()
            .filter(line -> line.matches("  [A-D], line \\d"))
            .map(line -> line.substring(2, 3))
            .reduce("", String::concat));
    assertTrue(text.endsWith("\nClean: no row with a stop.\n"));
  }
}
