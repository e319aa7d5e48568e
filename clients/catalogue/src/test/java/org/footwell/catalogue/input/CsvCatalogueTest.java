package org.footwell.catalogue.input;

import static org.footwell.catalogue.input.Reading.AS_IT_IS;
import static org.footwell.catalogue.input.Reading.COMMAS;
import static org.footwell.catalogue.input.Reading.csv;
import static org.footwell.catalogue.input.Reading.json;
import static org.footwell.catalogue.input.Reading.manner;
import static org.footwell.catalogue.input.Reading.rows;
import static org.footwell.catalogue.input.Reading.rowsOfCsv;
import static org.footwell.catalogue.input.Reading.sent;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

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
            {"rated_ohm": 4, "qts": 0.420,
             "sensitivity": {"level_db_spl": 89.5, "basis": "one_watt"},
             "tolerance": {"printed_rounding": false}}
            """),
        sent(rows.get(0)));
    assertEquals("17", rows.get(0).part());
  }

  @Test
  void emptyCellsAndColumnsThatAreNoFieldStayAway() throws IOException, CannotRun {
    List<Row> rows = rowsOfCsv("part_id,shelf,rated_ohm,qts\nA,9,4,\n");
    assertEquals(json("{\"rated_ohm\": 4}"), sent(rows.get(0)));
  }

  @Test
  void whatIsNoNumberGoesToTheServiceAsItStands() throws IOException, CannotRun {
    List<Row> rows = rowsOfCsv("rated_ohm\n\"3,4\"\n4 ohm\n.\nNaN\n");
    assertEquals(json("{\"rated_ohm\": \"3,4\"}"), sent(rows.get(0)));
    assertEquals(json("{\"rated_ohm\": \"4 ohm\"}"), sent(rows.get(1)));
    assertEquals(json("{\"rated_ohm\": \".\"}"), sent(rows.get(2)));
    assertEquals(json("{\"rated_ohm\": \"NaN\"}"), sent(rows.get(3)));
  }

  @Test
  void numbersMayBePrintedWithoutADigitBeforeOrAfterThePoint() throws IOException, CannotRun {
    List<Row> rows = rowsOfCsv("rated_ohm,qts,qms,qes\n04,.41,5.,1.e1\n");
    assertEquals(
        json("{\"rated_ohm\": 4, \"qts\": 0.41, \"qms\": 5, \"qes\": 1E+1}"), sent(rows.get(0)));
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
    List<Row> rows =
        rows(csv("part_id;rated_ohm\nA;4\n", manner(Separator.SEMICOLON, Decimal.POINT), AS_IT_IS));
    assertEquals(json("{\"rated_ohm\": 4}"), sent(rows.get(0)));
  }

  @Test
  void aHeaderInOnePieceIsToldWhatSeparatesIt() {
    assertCannotRun(
        "The header holds semicolons; add --separator semicolon.",
        () -> rowsOfCsv("part_id;rated_ohm\nA;4\n"));
    assertCannotRun(
        "The header holds tabs; add --separator tab.",
        () -> rowsOfCsv("part_id\trated_ohm\nA\t4\n"));
    assertCannotRun(
        "The header holds commas; add --separator comma.",
        () -> csv("part_id,rated_ohm\n", manner(Separator.TAB, Decimal.POINT), AS_IT_IS));
  }

  @Test
  void numbersMayHaveADecimalComma() throws IOException, CannotRun {
    Mapping mapping = new Mapping(null, Map.of(), Set.of(), Map.of("tolerance.qts_percent", "7.5"));
    Catalogue catalogue =
        csv(
            "part_id;rated_ohm;qts;qms;qes\n3,4;4;,41;3,05;1,2e0\nB;3.4;1.200,5;0.4;1\n",
            manner(Separator.SEMICOLON, Decimal.COMMA),
            mapping);
    List<Row> rows = rows(catalogue);
    assertEquals(
        json(
            """
            {"tolerance": {"qts_percent": 7.5},
             "rated_ohm": 4, "qts": 0.41, "qms": 3.05, "qes": 1.2}
            """),
        sent(rows.get(0)));
    assertEquals("3,4", rows.get(0).part());
    assertEquals("3.4", sent(rows.get(1)).get("rated_ohm").textValue(), "not taken for a number");
    assertEquals("1.200,5", sent(rows.get(1)).get("qts").textValue());
    assertEquals(
        List.of(
            "1 row with figures such as 0.4: if the catalogue is written with a decimal point, add"
                + " --decimal point."),
        catalogue.notes());
  }

  @Test
  void figuresThatLookLikeDecimalCommasAreToldWithTheOption() throws IOException, CannotRun {
    Catalogue catalogue = csv("part_id,qts\n\"3,4\",1\nB,\"0,4\"\nC,\"0,5\"\n", COMMAS, AS_IT_IS);
    rows(catalogue);
    assertEquals(
        List.of(
            "2 rows with figures such as 0,4: if the catalogue is written with a decimal comma, add"
                + " --decimal comma."),
        catalogue.notes());
  }

  @Test
  void rowsOfEmptyCellsAreBlankRows() throws IOException, CannotRun {
    List<Row> rows = rowsOfCsv("part_id,rated_ohm,qts\nA,4,1\n,,\n , ,\n,,,,\n\"\"\nB,4,1\n,,\n");
    assertEquals(List.of(2L, 7L), rows.stream().map(Row::line).toList());
    assertEquals(0, rowsOfCsv("part_id,rated_ohm,qts\n,,\n").size());
  }

  @Test
  void aRowWithTooManyOrTooFewCellsIsRefusedHere() throws IOException, CannotRun {
    List<Row> rows = rowsOfCsv("part_id,rated_ohm\nA,4,5\nB\nC,4\n");
    assertEquals("The row has 3 cells, the header 2.", rows.get(0).remark().text());
    assertEquals("refused-unreadable", rows.get(0).remark().code());
    assertEquals("B", rows.get(1).part());
    assertEquals("The row has 1 cell, the header 2.", rows.get(1).remark().text());
    assertNull(rows.get(2).remark());
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
        csv("SKU,error,Impedance,reconcile\nA,x,4,\nB,x,8,when_off\n", COMMAS, mapping);
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
        assertThrows(CannotRun.class, () -> csv("part_id,rated_ohm\n", COMMAS, mapping))
            .getMessage());
  }

  @Test
  void aRowMayHaveNoPartNumber() throws IOException, CannotRun {
    assertNull(rowsOfCsv("part_id,rated_ohm\n ,4\n").get(0).part());
    assertNull(rowsOfCsv("rated_ohm\n4\n").get(0).part());
  }

  @Test
  void partNumbersAreKeptToOneLineWithoutControlCharacters() throws IOException, CannotRun {
    assertEquals("A [31mB", rowsOfCsv("part_id,rated_ohm\n\"A\n\u001b[31mB\",4\n").get(0).part());
  }

  private static void assertCannotRun(String sentence, Executable reading) {
    assertEquals(sentence, assertThrows(CannotRun.class, reading).getMessage());
  }

  @Test
  void anEmptyFileIsSaidToBeSo() {
    assertThrows(CannotRun.class, () -> rowsOfCsv(""));
  }

  @Test
  void aQuoteThatIsNeverClosedIsToldWithTheLineOfItsRow() {
    String swallowed = "A,4,ok\nB,4,\"nice\nC,4,ok\nD,4,ok";
    for (String end : List.of("", "\n", "\r\n", "\n\n")) {
      assertCannotRun(
          "A quote opened in the row of line 3 is never closed.",
          () -> rowsOfCsv("part_id,rated_ohm,x\n" + swallowed + end));
    }
    assertCannotRun(
        "A quote opened in the row of line 1 is never closed.",
        () -> rowsOfCsv("part_id,\"rated_ohm\nA,4\n"));
    assertCannotRun(
        "A quote opened in the row of line 2 is never closed.",
        () -> rowsOfCsv("part_id,rated_ohm\nA,\""));
  }

  @Test
  void aQuoteThatIsClosedAtTheVeryEndIsInOrder() throws IOException, CannotRun {
    assertEquals(1, rowsOfCsv("part_id,rated_ohm\nA,\"4\"").size());
  }

  @Test
  void aRowHasALimitWhetherOneCellIsLongOrAllAre() {
    String long1 = "\"" + "x".repeat(1_100_000) + "\"";
    String long2 = "y".repeat(600_000) + "," + "z".repeat(600_000);
    for (String cells : List.of(long1 + ",", long2, long1.substring(0, 1_090_000))) {
      String catalogue = "part_id,rated_ohm,x,y\nA,4,,\nB,4," + cells + "\nC,4,,\n";
      assertCannotRun(
          "The CSV cannot be read after line 2: a row is larger than 1 MiB, perhaps as its quote is"
              + " never closed, or a cell goes on after its closing quote.",
          () -> rowsOfCsv(catalogue));
    }
  }

  @Test
  void bytesOfAnotherCharacterSetAreToldWithTheirLineAndNotReplaced() throws Exception {
    byte[] latin1 = "part_id,rated_ohm\nA,4\nBaß,4\n".getBytes(StandardCharsets.ISO_8859_1);
    assertCannotRun(
        "The row of line 3 is not in UTF-8: say what it is in, such as --charset windows-1252.",
        () -> rows(csv(latin1, StandardCharsets.UTF_8)));
    assertEquals("Baß", rows(csv(latin1, StandardCharsets.ISO_8859_1)).get(1).part());
    assertEquals("\uFFFD", rowsOfCsv("part_id,rated_ohm\n\uFFFD,4\n").get(0).part());
  }

  @Test
  void aByteOrderMarkSaysTheCharacterSet() throws Exception {
    String text = "\uFEFFpart_id,rated_ohm\nBaß,4\n";
    for (Charset marked :
        List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16BE, StandardCharsets.UTF_16LE)) {
      List<Row> rows = rows(csv(text.getBytes(marked), StandardCharsets.ISO_8859_1));
      assertEquals("Baß", rows.get(0).part());
    }
  }
}
