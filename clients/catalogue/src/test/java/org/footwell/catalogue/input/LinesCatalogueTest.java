package org.footwell.catalogue.input;

import static org.footwell.catalogue.input.Reading.AS_IT_IS;
import static org.footwell.catalogue.input.Reading.json;
import static org.footwell.catalogue.input.Reading.lines;
import static org.footwell.catalogue.input.Reading.rows;
import static org.footwell.catalogue.input.Reading.sent;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

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
    assertEquals(json("{\"qts\":0.40}"), sent(rows.get(0)));
  }

  @Test
  void whatIsNotOneObjectALineIsRefusedHere() throws IOException, CannotRun {
    List<Row> rows =
        rows(lines("{\"qts\":\n[1]\n{\"qts\":1} {\"qts\":2}\n{\"qts\":1,\"qts\":2}\n", AS_IT_IS));
    assertEquals(4, rows.size());
    for (Row row : rows) {
      assertEquals("The line is not one well-formed JSON object.", row.remark().text());
    }
  }

  @Test
  void aLineThatIsTooLongIsPassedOver() throws IOException, CannotRun {
    List<Row> rows =
        rows(lines("{\"x\":\"" + "y".repeat(1_200_000) + "\"}\n{\"part_id\":\"B\"}\n", AS_IT_IS));
    assertEquals("refused-too-large", rows.get(0).remark().code());
    assertEquals("B", rows.get(1).part());
  }

  @Test
  void aKeyThatOptionsNameAndNoLineHasIsSaid() throws IOException, CannotRun {
    Mapping mapping = new Mapping("nope", Map.of("qts", "Q"), Set.of(), Map.of());
    CannotRun fault =
        assertThrows(CannotRun.class, () -> rows(lines("{\"qts\":0.4}\n{\"Q\":0.4}\n", mapping)));
    assertEquals("No line has nope, which options name.", fault.getMessage());
    assertEquals(List.of(), rows(lines("", mapping)));
    assertEquals(2, rows(lines("{\"qts\":0.4}\n{\"Q\":0.4,\"nope\":1}\n", mapping)).size());
  }

  @Test
  void aFieldUnderBothItsNamesIsRefusedHere() throws IOException, CannotRun {
    Mapping mapping =
        new Mapping(
            null, Map.of("qts", "Q", "sensitivity.level_db_spl", "spl"), Set.of(), Map.of());
    List<Row> rows =
        rows(
            lines(
                """
                {"part_id":"A","qts":0.3,"Q":0.4}
                {"sensitivity":{"level_db_spl":90},"spl":91}
                {"qts":0.3,"spl":91}
                """,
                mapping));
    assertEquals("refused-duplicate", rows.get(0).remark().code());
    assertEquals("qts is given twice, also as Q.", rows.get(0).remark().text());
    assertEquals("A", rows.get(0).part());
    assertEquals("refused-duplicate", rows.get(1).remark().code());
    assertNull(rows.get(2).remark());
  }

  @Test
  void twoKeysMayChangePlaces() throws IOException, CannotRun {
    Mapping mapping = new Mapping(null, Map.of("qes", "qms", "qms", "qes"), Set.of(), Map.of());
    List<Row> rows = rows(lines("{\"qes\":7,\"qms\":0.5}\n{\"qes\":7}\n", mapping));
    assertEquals(json("{\"qms\":7,\"qes\":0.5}"), sent(rows.get(0)));
    assertEquals(json("{\"qms\":7}"), sent(rows.get(1)));
  }

  @Test
  void aPartNumberOfNullIsNone() throws IOException, CannotRun {
    assertNull(rows(lines("{\"part_id\":null,\"qts\":1}", AS_IT_IS)).get(0).part());
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
