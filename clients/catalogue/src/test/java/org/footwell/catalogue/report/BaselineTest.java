package org.footwell.catalogue.report;

import static org.footwell.catalogue.report.Rows.NOTE;
import static org.footwell.catalogue.report.Rows.STOP;
import static org.footwell.catalogue.report.Rows.WARNING;
import static org.footwell.catalogue.report.Rows.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Level;
import org.footwell.catalogue.row.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BaselineTest {

  @TempDir private Path folder;

  private Baseline baseline() throws IOException, CannotRun {
    Path file = folder.resolve("known");
    Rows.write(new BaselineReport(file), row(2, "A"), row(3, "B", STOP, NOTE), row(4, "C", STOP));
    return Baseline.read(file);
  }

  @Test
  void whatIsKnownIsLeftOutWhereverItsRowHasMovedTo() throws IOException, CannotRun {
    Baseline baseline = baseline();
    assertEquals(List.of(), baseline.news(row(900, "B", STOP, NOTE)).remarks());
    assertEquals(2, baseline.met());
    assertEquals(1, baseline.gone());
  }

  @Test
  void anotherRuleAnotherFieldAndAnotherPartAreNews() throws IOException, CannotRun {
    Baseline baseline = baseline();
    Remark otherField = new Remark(Level.STOP, STOP.code(), "qes", STOP.text());
    assertEquals(
        List.of(WARNING, otherField),
        baseline.news(row(3, "B", STOP, WARNING, otherField)).remarks());
    assertEquals(List.of(NOTE), baseline.news(row(4, "C", NOTE)).remarks());
    assertEquals(List.of(STOP), baseline.news(row(5, "D", STOP)).remarks());
  }

  @Test
  void aFurtherFindingOfAPartListedTwiceIsNews() throws IOException, CannotRun {
    Baseline baseline = baseline();
    assertEquals(List.of(), baseline.news(row(4, "C", STOP)).remarks());
    assertEquals(List.of(STOP), baseline.news(row(9, "C", STOP)).remarks());
    assertEquals(1, baseline.met());
  }

  @Test
  void aRowWithoutPartNumberIsNeverKnown() throws IOException, CannotRun {
    Path file = folder.resolve("known");
    Rows.write(new BaselineReport(file), row(2, null, STOP), row(3, null, NOTE));
    assertEquals(List.of(Baseline.TITLE), Files.readAllLines(file));
    assertEquals(List.of(STOP), Baseline.read(file).news(row(2, null, STOP)).remarks());
  }

  @Test
  void otherFiguresInTheSentenceAreNoNews() throws IOException, CannotRun {
    Remark reworded = new Remark(Level.STOP, STOP.code(), STOP.field(), "qts of 3 …");
    assertEquals(Level.OK, baseline().news(row(3, "B", reworded)).verdict());
  }

  @Test
  void anotherFileIsNotTakenForABaseline() throws IOException {
    Path text = Files.writeString(folder.resolve("text"), "part_id,rated_ohm\n");
    Path binary = Files.write(folder.resolve("binary"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
    assertThrows(CannotRun.class, () -> Baseline.read(text));
    assertThrows(CannotRun.class, () -> Baseline.read(binary));
    assertThrows(CannotRun.class, () -> Baseline.read(folder.resolve("none")));
  }
}
