package org.footwell.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
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

  /** Every text of at most six of these characters: a number is what this expression says. */
  @Test
  void aNumberIsWhatTheExpressionSays() {
    Pattern number = Pattern.compile("[+-](\\d+[.,]?\\d*|[.,]\\d+)([eE][+-]?\\d+)?");
    List<String> texts = List.of("");
    for (int length = 1; length <= 6; length++) {
      texts =
          texts.stream().flatMap(text -> "+-.,7eE".chars().mapToObj(c -> text + (char) c)).toList();
      for (String text : texts) {
        boolean plain = !"+-".contains(text.substring(0, 1)) || number.matcher(text).matches();
        assertEquals(plain ? text : "'" + text, CsvCell.harmless(text));
      }
    }
  }
}
