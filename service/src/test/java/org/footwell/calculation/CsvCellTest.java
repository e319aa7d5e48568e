package org.footwell.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells that a spreadsheet would run. */
class CsvCellTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "=HYPERLINK(\"x\")",
        "+A1",
        "-A1",
        "-1+2",
        "@SUM(1)",
        "\t=1",
        "\r=1",
        "-",
        "+49 30"
      })
  void aFormulaBecomesAText(String text) {
    assertEquals("'" + text, CsvCell.harmless(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "-5", "+5", "-0.5", "-.5", "-5,5", "-1.5e-7", "a=1", "5-1", "'=1", " =1"})
  void anythingElseStaysAsItIs(String text) {
    assertEquals(text, CsvCell.harmless(text));
  }
}
