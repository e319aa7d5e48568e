package org.footwell.web.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.footwell.web.request.ProblemWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows of a CSV, gathered cell by cell. */
class CsvRowsTest {

  private static CsvRows rows(String csv) throws IOException {
    return new CsvRows(
        new ByteArrayInputStream(csv.getBytes(StandardCharsets.UTF_8)), ',', 100_000);
  }

  private static List<List<String>> read(String csv) throws IOException, CsvRows.Broken {
    List<List<String>> all = new ArrayList<>();
    try (CsvRows rows = rows(csv)) {
      for (CsvRow row = rows.next(); row != null; row = rows.next()) {
        all.add(row.cells().texts());
      }
    }
    return all;
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n", "\r\n", "\n\n\n"})
  void theLastRowEndsAnyhow(String end) throws Exception {
    assertEquals(List.of(List.of("a", ""), List.of("", "b")), read("a,\n,b" + end));
    assertEquals(List.of(List.of("a,\n\"b")), read("\"a,\n\"\"b\"" + end));
    assertEquals(List.of(), read(end));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"", "a\n\"b", "a\n\"b\n", "\"a\"\"", "a,\"b\nc,d\n\"\"e\n"})
  void aQuoteThatIsNeverClosedIsFound(String csv) {
    CsvRows.Broken broken = assertThrows(CsvRows.Broken.class, () -> read(csv));
    int line = csv.startsWith("a\n") ? 2 : 1;
    assertEquals(
        "line " + line + ": a quote that opens in this row is never closed.",
        broken.in(ProblemWords.ROW_BROKEN).toString());
  }

  @Test
  void aReturnInQuotesLosesNoRow() throws Exception {
    assertEquals(
        List.of(List.of("h", "i"), List.of("c", "x\ra"), List.of("b", "d")),
        read("h,i\nc,\"x\ra\"\nb,d\n"));
    assertEquals(List.of(List.of("\r"), List.of("b")), read("\"\r\"\nb"));
    assertEquals(List.of(List.of("x\r\na"), List.of("b")), read("\"x\r\na\"\r\nb"));
    assertEquals(List.of(List.of("\r"), List.of("a", "b")), read("\"\r\"\ra,b"));
  }

  @Test
  void aLineFeedFirstInQuotesStaysOne() throws Exception {
    for (String before : List.of("a\rb", "\"\r\"")) {
      assertEquals("\n", read(before + "\n=,\"\n\"\n").get(before.contains("b") ? 2 : 1).get(1));
    }
    assertEquals(List.of(List.of("\r", "\n"), List.of("b")), read("\"\r\",\"\n\"\nb"));
    assertEquals(List.of(List.of("\"\n\r"), List.of("b")), read("\"\"\"\n\r\"\nb"));
    assertEquals(
        List.of(List.of("a\"\""), List.of("", "\n"), List.of("b")), read("a\"\"\r,\"\n\"\nb"));
  }

  @Test
  void theLastCharacterOfUnicodeEndsNothing() throws Exception {
    assertEquals(
        List.of(List.of("a"), List.of("\uFFFF"), List.of("b", "\uFFFF"), List.of("c")),
        read("a\n\uFFFF\nb,\uFFFF\nc"));
    assertEquals(List.of(List.of("\uFFFF")), read("\uFFFF\n"));
  }

  @Test
  void manyCellsAndLongOnesAreKept() throws Exception {
    String cell = "x".repeat(5_000);
    assertEquals(List.of(List.of(cell, cell, "")), read(cell + "," + cell + ","));
    assertEquals(1001, read(",".repeat(1000)).get(0).size());
  }

  @Test
  void aRowThatIsTooLongIsFound() {
    assertThrows(CsvRows.Broken.class, () -> read("a\n" + "x,".repeat(50_001)));
  }

  @Test
  void whatGoesWrongWhileReadingIsNoMatterOfTheCsv() throws Exception {
    RuntimeException own = new IllegalStateException("a piece failed");
    InputStream failing =
        new FilterInputStream(InputStream.nullInputStream()) {
          @Override
          public int read(byte[] into, int offset, int length) {
            throw own;
          }
        };
    InputStream in =
        new SequenceInputStream(
            new ByteArrayInputStream("a\nb".getBytes(StandardCharsets.UTF_8)), failing);
    try (CsvRows rows = new CsvRows(in, ',', 1000)) {
      assertEquals("a", rows.next().cells().text(0));
      assertSame(own, assertThrows(RuntimeException.class, rows::next));
    }
  }

  @Test
  void thereIsNothingAfterTheLastRow() throws Exception {
    try (CsvRows rows = rows("a")) {
      rows.next();
      assertNull(rows.next());
    }
  }
}
