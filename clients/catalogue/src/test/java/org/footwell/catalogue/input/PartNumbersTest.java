package org.footwell.catalogue.input;

import static org.footwell.catalogue.input.Reading.AS_IT_IS;
import static org.footwell.catalogue.input.Reading.COMMAS;
import static org.footwell.catalogue.input.Reading.csv;
import static org.footwell.catalogue.input.Reading.lines;
import static org.footwell.catalogue.input.Reading.rows;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Level;
import org.footwell.catalogue.row.Remark;
import org.footwell.catalogue.row.Row;
import org.junit.jupiter.api.Test;

class PartNumbersTest {

  private static final Remark CONTRADICTED =
      new Remark(
          Level.WARNING,
          "part-contradicted",
          "part_id",
          "An earlier row has the same part number and other figures.");

  private static List<Row> contradicted(List<Row> rows) {
    return rows.stream().filter(row -> CONTRADICTED.equals(row.remark())).toList();
  }

  @Test
  void missingAndRepeatedOnesAreCounted() throws IOException, CannotRun {
    Catalogue catalogue =
        new PartNumbers(csv("part_id,qts\nA,1\n,1\nB,1\nA,1\nA,1\n", COMMAS, AS_IT_IS));
    assertEquals(List.of(), contradicted(rows(catalogue)));
    assertEquals(
        List.of(
            "1 row without a part number, which no baseline knows.",
            "2 rows with the part number of an earlier one, first in line 5."),
        catalogue.notes());
  }

  @Test
  void aRepeatedOneWithOtherFiguresIsAFinding() throws IOException, CannotRun {
    String rows = "A,1,4,x\nB,1,4,x\nA,2,4,x\nA,1.0,4,y\nB,1,,x\nC,2,4,x\n";
    Catalogue catalogue = new PartNumbers(csv("part_id,qts,qes,shelf\n" + rows, COMMAS, AS_IT_IS));
    assertEquals(List.of(4L, 6L), contradicted(rows(catalogue)).stream().map(Row::line).toList());
  }

  @Test
  void theOrderOfKeysIsNoDifference() throws IOException, CannotRun {
    String same =
        """
        {"part_id":"A","qts":10,"sensitivity":{"basis":"one_watt","level_db_spl":90}}
        {"sensitivity":{"level_db_spl":90.0,"basis":"one_watt"},"qts":1e1,"part_id":"A"}
        {"sensitivity":{"level_db_spl":90.5,"basis":"one_watt"},"qts":10,"part_id":"A"}
        """;
    assertEquals(
        List.of(3L),
        contradicted(rows(new PartNumbers(lines(same, AS_IT_IS)))).stream()
            .map(Row::line)
            .toList());
  }

  @Test
  void aRowThatCannotBeReadKeepsItsRefusal() throws IOException, CannotRun {
    List<Row> rows = rows(new PartNumbers(csv("part_id,qts\nA,1\nA,1,2\n", COMMAS, AS_IT_IS)));
    assertEquals("refused-unreadable", rows.get(1).remark().code());
  }
}
