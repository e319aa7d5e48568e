package org.footwell.catalogue.report;

import static org.footwell.catalogue.report.Rows.NOTE;
import static org.footwell.catalogue.report.Rows.REFUSED;
import static org.footwell.catalogue.report.Rows.STOP;
import static org.footwell.catalogue.report.Rows.WARNING;
import static org.footwell.catalogue.report.Rows.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.footwell.catalogue.JunitXml;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Level;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JunitReportTest {

  @TempDir private Path folder;

  private JunitXml written(Level failFrom, CheckedRow... rows) throws Exception {
    Path file = folder.resolve("report.xml");
    Rows.write(new JunitReport(file, "drivers.csv", failFrom), rows);
    return JunitXml.read(file);
  }

  @Test
  void everyFindingIsACaseAndSoIsARowWithoutAny() throws Exception {
    JunitXml xml =
        written(Level.WARNING, row(2, "A"), row(3, "B", STOP, WARNING, NOTE), row(4, "C", REFUSED));
    assertEquals(
        List.of(
            "A: ok",
            "B: qts-impossible qts",
            "B: implausible xmax_mm",
            "B: not-checked",
            "C: refused-wrong-type rated_ohm"),
        xml.names());
    assertEquals(List.of(5, 2, 1), List.of(xml.tests(), xml.failures(), xml.errors()));
  }

  @Test
  void onlyWhatFailsTheCheckIsAFailure() throws Exception {
    assertEquals(1, written(Level.STOP, row(3, "B", STOP, WARNING, NOTE)).failures());
    assertEquals(3, written(Level.NOTE, row(3, "B", STOP, WARNING, NOTE)).failures());
  }

  @Test
  void aPartThatIsListedTwiceKeepsItsNamesApart() throws Exception {
    JunitXml xml = written(Level.STOP, row(2, "A"), row(9, "A"), row(12, "A", NOTE, NOTE, NOTE));
    assertEquals(
        List.of(
            "A: ok",
            "A: ok (line 9)",
            "A: not-checked",
            "A: not-checked (line 12)",
            "A: not-checked (line 12, 2)"),
        xml.names());
  }

  @Test
  void textThatXmlCannotCarryIsReplaced() throws Exception {
    assertEquals(List.of("<A&\"> �𝄞: ok"), written(Level.STOP, row(2, "<A&\"> \uFFFE𝄞")).names());
  }

  @Test
  void whatIsNotFinishedLeavesNoFile() throws IOException {
    Path file = folder.resolve("report.xml");
    try (Report report = new JunitReport(file, "drivers.csv", Level.STOP)) {
      report.add(row(2, "A"));
    }
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(List.of(), left.toList());
    }
    assertFalse(Files.exists(file));
  }

  @Test
  void aFinishedReportLeavesOneFile() throws Exception {
    written(Level.STOP, row(2, "A"));
    try (Stream<Path> left = Files.list(folder)) {
      assertTrue(left.allMatch(file -> file.endsWith("report.xml")));
    }
  }
}
