package org.footwell.catalogue.input;

import static org.footwell.catalogue.input.Reading.AS_IT_IS;
import static org.footwell.catalogue.input.Reading.json;
import static org.footwell.catalogue.input.Reading.lines;
import static org.footwell.catalogue.input.Reading.rows;
import static org.footwell.catalogue.input.Reading.sent;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Row;
import org.junit.jupiter.api.Test;

class LinesCatalogueTest {

  @Test
  void linesAreThoseOfTheFileAndEmptyOnesAreSkipped() throws IOException, CannotRun {
    List<Row> rows =
        rows(lines("\uFEFF{\"part_id\":\"A\",\"qts\":0.40}\n\n  \r\n{\"part_id\":7}", AS_IT_IS));
    assertEquals(List.of(1L, 4L), rows.stream().map(Row::line).toList());
    assertEquals(List.of("A", "7"), rows.stream().map(Row::part).toList());
    assertEquals(json("{\"part_id\":\"A\",\"qts\":0.40}"), sent(rows.get(0)));
  }

  @Test
  void whatIsNotOneObjectALineIsRefusedHere() throws IOException, CannotRun {
    List<Row> rows =
        rows(lines("{\"qts\":\n[1]\n{\"qts\":1} {\"qts\":2}\n{\"qts\":1,\"qts\":2}\n", AS_IT_IS));
    assertEquals(4, rows.size());
    for (Row row : rows) {
      assertEquals("The line is not one well-formed JSON object.", row.refusal().text());
    }
  }

  @Test
  void aLineThatIsTooLongIsPassedOver() throws IOException, CannotRun {
    List<Row> rows =
        rows(lines("{\"x\":\"" + "y".repeat(1_200_000) + "\"}\n{\"part_id\":\"B\"}\n", AS_IT_IS));
    assertEquals("refused-too-large", rows.get(0).refusal().code());
    assertEquals("B", rows.get(1).part());
  }

  @Test
  void fieldsAreRenamedLeftOutAndFilledIn() throws IOException, CannotRun {
    Mapping mapping =
        new Mapping(
            "sku",
            Map.of("qts", "Q", "sensitivity.level_db_spl", "spl"),
            Set.of("shelf"),
            Map.of("rated_ohm", "4", "sensitivity.basis", "one_watt"));
    List<Row> rows =
        rows(lines("{\"sku\":\"A\",\"Q\":0.4,\"spl\":90,\"shelf\":1,\"rated_ohm\":8}", mapping));
    assertEquals("A", rows.get(0).part());
    assertEquals(
        json(
            """
            {"rated_ohm": 8, "qts": 0.4, "sensitivity": {"level_db_spl": 90, "basis": "one_watt"}}
            """),
        sent(rows.get(0)));
  }
}
