package org.footwell.web.batch;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.footwell.calculation.CsvCell;
import org.footwell.calculation.Row;
import org.footwell.calculation.text.Names;

/**
 * Writes CSV, with no cell that a spreadsheet would take for a formula: a cell stands in quotes only where it must, a row ends with a line feed. A library
 * that takes rows of texts would look at every character of every number once more. Used by one
 * thread at a time.
 */
final class CsvText {

  private static final int START_CHARACTERS = 1 << 14;

  /** What reading puts in the place of bytes that are none of UTF-8. */
  private static final String REPLACEMENT = "\uFFFD";

  private final StringBuilder text = new StringBuilder(START_CHARACTERS);
  private final NumberTexts numbers;
  private final char separator;

  /** Index at which the row begins. */
  private int row;

  CsvText(CsvForm form) {
    separator = form.separator();
    numbers = new NumberTexts(form.digits());
  }

  /** A row of texts. */
  void row(List<String> cells) {
    cells.forEach(this::cell);
    endRow();
  }

  /** So many cells of a row as they came, formulas made harmless; those that are missing are empty. */
  void cells(CsvRow came, int count) {
    row = text.length();
    Row cells = came.cells();
    if (came.quoted() || cells.size() > count || cells.holdsFormula()) {
      cells.texts().stream().limit(count).forEach(this::cell);
    } else {
      cells.appendTo(text);
    }
    blanks(count - cells.size());
  }

  /** Whether bytes of the row's own cells were none of UTF-8. */
  boolean isRowGarbled() {
    return text.indexOf(REPLACEMENT, row) >= 0;
  }

  /** Whether bytes of a text were none of UTF-8. */
  static boolean isGarbled(String text) {
    return text.contains(REPLACEMENT);
  }

  /** A cell that may hold anything. */
  void cell(String given) {
    String value = CsvCell.harmless(given);
    if (mustBeQuoted(value)) {
      text.append('"').append(value.replace("\"", "\"\"")).append('"');
    } else {
      text.append(value);
    }
    text.append(separator);
  }

  /** A value as it stands in JSON, without quotes; nothing for null. A list is one cell. */
  void value(Object value) {
    if (value instanceof Double number) {
      numbers.append(number, text);
      text.append(separator);
    } else if (value instanceof String words) {
      cell(words);
    } else if (value instanceof BigDecimal money) {
      plain(money.toPlainString());
    } else if (value instanceof Enum<?> constant) {
      plain(Names.of(constant));
    } else if (value instanceof List<?> list) {
      cell(joined(list));
    } else {
      plain(value == null ? "" : value.toString());
    }
  }

  /** Names with a space between, texts with a semicolon, since they hold spaces. */
  private static String joined(List<?> list) {
    StringBuilder all = new StringBuilder();
    String between = "";
    for (Object entry : list) {
      all.append(between);
      if (entry instanceof Enum<?> constant) {
        all.append(Names.of(constant));
        between = " ";
      } else {
        all.append(entry);
        between = "; ";
      }
    }
    return all.toString();
  }

  /** A cell of words that need no quotes, a space between each and the next. */
  void words(List<String> words) {
    for (int i = 0; i < words.size(); i++) {
      text.append(i == 0 ? "" : " ").append(words.get(i));
    }
    text.append(separator);
  }

  /** Cells with nothing in them. */
  void blanks(int count) {
    for (int i = 0; i < count; i++) {
      text.append(separator);
    }
  }

  private void plain(String value) {
    text.append(value).append(separator);
  }

  /** A place in the row that can be gone back to. */
  int place() {
    return text.length();
  }

  void backTo(int place) {
    text.setLength(place);
  }

  void endRow() {
    text.setCharAt(text.length() - 1, '\n');
  }

  private boolean mustBeQuoted(String value) {
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      if (c == separator || c == '"' || c == '\n' || c == '\r') {
        return true;
      }
    }
    return false;
  }

  /** What was written since it was taken last. */
  byte[] take() {
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    text.setLength(0);
    return bytes;
  }
}
