package org.footwell.catalogue.input;

import static org.footwell.catalogue.input.Reading.AS_IT_IS;
import static org.footwell.catalogue.input.Reading.csv;
import static org.footwell.catalogue.input.Reading.json;
import static org.footwell.catalogue.input.Reading.rows;
import static org.footwell.catalogue.input.Reading.rowsOfCsv;
import static org.footwell.catalogue.input.Reading.sent;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Row;
import org.junit.jupiter.api.Test;

class CsvCatalogueTest {

  @Test
  void cellsBecomeFieldsInTheTypesOfTheContract() throws IOException, CannotRun {
    List<Row> rows =
        rowsOfCsv(
            """
            part_id,rated_ohm,qts,sensitivity.level_db_spl,sensitivity.basis,tolerance.printed_rounding
            17,4,4.20e-1,89.5,one_watt,false
            """);
    assertEquals(
        json(
            """
            {"part_id": "17", "rated_ohm": 4, "qts": 0.420,
             "sensitivity": {"level_db_spl": 89.5, "basis": "one_watt"},
             "tolerance": {"printed_rounding": false}}
            """),
        sent(rows.get(0)));
    assertEquals("17", rows.get(0).part());
  }

  @Test
  void emptyCellsAndColumnsThatAreNoFieldStayAway() throws IOException, CannotRun {
    List<Row> rows = rowsOfCsv("part_id,shelf,rated_ohm,qts\nA,9,4,\n");
    assertEquals(json("{\"part_id\": \"A\", \"rated_ohm\": 4}"), sent(rows.get(0)));
  }

  @Test
  void whatIsNoNumberGoesToTheServiceAsItStands() throws IOException, CannotRun {
    List<Row> rows = rowsOfCsv("rated_ohm\n\"3,4\"\n4 ohm\n04\nNaN\n");
    assertEquals(json("{\"rated_ohm\": \"3,4\"}"), sent(rows.get(0)));
    assertEquals(json("{\"rated_ohm\": \"4 ohm\"}"), sent(rows.get(1)));
    assertEquals(json("{\"rated_ohm\": \"04\"}"), sent(rows.get(2)));
    assertEquals(json("{\"rated_ohm\": \"NaN\"}"), sent(rows.get(3)));
  }

  @Test
  void linesAreThoseOfTheFileThroughLineBreaksInCellsAndEmptyLines() throws IOException, CannotRun {
    List<Row> rows =
        rowsOfCsv("part_id,text,rated_ohm\r\nA,\"two\r\nlines, \"\"quoted\"\"\",4\r\n\r\nB,,8\r\n");
    assertEquals(List.of(2L, 5L), rows.stream().map(Row::line).toList());
    assertEquals("B", rows.get(1).part());
  }

  @Test
  void aByteOrderMarkIsNoPartOfTheFirstColumn() throws IOException, CannotRun {
    assertEquals("Ä", rowsOfCsv("\uFEFFpart_id,rated_ohm\nÄ,4\n").get(0).part());
  }

  @Test
  void cellsMayBeSeparatedBySemicolons() throws IOException, CannotRun {
    List<Row> rows = rows(csv("part_id;rated_ohm\nA;4\n", ';', AS_IT_IS));
    assertEquals(json("{\"part_id\": \"A\", \"rated_ohm\": 4}"), sent(rows.get(0)));
    assertTrue(
        assertThrows(CannotRun.class, () -> rowsOfCsv("part_id;rated_ohm\nA;4\n"))
            .getMessage()
            .contains("--separator semicolon"));
  }

  @Test
  void aRowWithTooManyOrTooFewCellsIsRefusedHere() throws IOException, CannotRun {
    List<Row> rows = rowsOfCsv("part_id,rated_ohm\nA,4,5\nB\nC,4\n");
    assertEquals("The row has 3 cells, the header 2.", rows.get(0).refusal().text());
    assertEquals("refused-unreadable", rows.get(0).refusal().code());
    assertEquals("B", rows.get(1).part());
    assertEquals("The row has 1 cells, the header 2.", rows.get(1).refusal().text());
    assertNull(rows.get(2).refusal());
  }

  @Test
  void columnsAreRenamedAndLeftOut() throws IOException, CannotRun {
    Mapping mapping =
        new Mapping(
            "SKU",
            Map.of("rated_ohm", "Impedance"),
            Set.of("error"),
            Map.of("reconcile", "always"));
    Catalogue catalogue =
        csv("SKU,error,Impedance,reconcile\nA,x,4,\nB,x,8,when_off\n", ',', mapping);
    assertEquals(List.of("SKU", "rated_ohm", "reconcile"), catalogue.header());
    List<Row> rows = rows(catalogue);
    assertEquals("A", rows.get(0).part());
    assertEquals(json("{\"rated_ohm\": 4, \"reconcile\": \"always\"}"), sent(rows.get(0)));
    assertEquals(json("{\"rated_ohm\": 8, \"reconcile\": \"when_off\"}"), sent(rows.get(1)));
  }

  @Test
  void aColumnThatIsNamedMustBeThere() {
    Mapping mapping = new Mapping("SKU", Map.of(), Set.of(), Map.of());
    assertEquals(
        "The header has no column SKU; it has part_id, rated_ohm.",
        assertThrows(CannotRun.class, () -> csv("part_id,rated_ohm\n", ',', mapping)).getMessage());
  }

  @Test
  void aRowWithoutAPartNumberIsCalledByItsLine() throws IOException, CannotRun {
    assertEquals("line 2", rowsOfCsv("part_id,rated_ohm\n,4\n").get(0).part());
    assertEquals("line 2", rowsOfCsv("rated_ohm\n4\n").get(0).part());
  }

  @Test
  void partNumbersAreKeptToOneLineWithoutControlCharacters() throws IOException, CannotRun {
    assertEquals("A [31mB", rowsOfCsv("part_id,rated_ohm\n\"A\n\u001b[31mB\",4\n").get(0).part());
  }

  @Test
  void anEmptyFileAndACellWithoutEndAreSaidToBeSo() {
    assertThrows(CannotRun.class, () -> rowsOfCsv(""));
    String endless = "part_id,rated_ohm\nA,4\nB,\"" + "x".repeat(2_000_000);
    assertTrue(
        assertThrows(CannotRun.class, () -> rowsOfCsv(endless)).getMessage().contains("line 2"));
  }
}
