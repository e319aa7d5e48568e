package org.footwell.catalogue.report;

import static org.footwell.catalogue.report.Rows.NOTE;
import static org.footwell.catalogue.report.Rows.STOP;
import static org.footwell.catalogue.report.Rows.WARNING;
import static org.footwell.catalogue.report.Rows.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.LongStream;
import org.footwell.catalogue.row.CheckedRow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MarkdownReportTest {

  private static final int LIMIT = 1 << 20;

  @TempDir private Path folder;

  private String written(CheckedRow... rows) throws IOException {
    Path file = folder.resolve("report.md");
    Rows.write(new MarkdownReport(file), rows);
    assertTrue(Files.size(file) < LIMIT);
    return Files.readString(file);
  }

  @Test
  void theWorstRowsComeFirst() throws IOException {
    assertEquals(
        """
        # Catalogue check: drivers.csv

        3 rows: 1 stop, 0 warning, 1 note, 1 ok.

        | level | finding | count | meaning |
        |---|---|---:|---|
        | stop | `qts-impossible` | 1 | qts is not smaller than qes and qms |
        | note | `not-checked` | 2 | Some figures could not be checked for lack of others |

        | line | part | findings |
        |---:|---|---|
        | 4 | C | **stop** qts of 2 must be smaller than qes of 1.<br>**note** Not checked for lack of figures: qms. |
        | 3 | B | **note** Not checked for lack of figures: qms. |
        """,
        written(row(2, "A"), row(3, "B", NOTE), row(4, "C", STOP, NOTE)));
  }

  @Test
  void partNumbersCannotBreakTheTable() throws IOException {
    assertTrue(written(row(2, "a|b<i>`c`", NOTE)).contains("| 2 | a\\|b&lt;i>\\`c\\` | **note**"));
  }

  @Test
  void whatDoesNotFitIsCountedAndTheWorstStays() throws IOException {
    CheckedRow[] rows =
        LongStream.rangeClosed(2, 40_001)
            .mapToObj(line -> row(line, "part-" + line, line == 40_001 ? STOP : WARNING))
            .toArray(CheckedRow[]::new);
    String markdown = written(rows);
    assertTrue(markdown.contains("| 40001 | part-40001 | **stop**"));
    long shown = markdown.lines().filter(line -> line.contains(" | part-")).count();
    assertTrue(
        markdown.endsWith(
            "\nCut here to stay under 1 MiB: there are "
                + (40_000 - shown)
                + " more rows with findings.\n"));
  }

  @Test
  void aCleanCatalogueHasNoTables() throws IOException {
    assertFalse(written(row(2, "A")).contains("|"));
  }
}
