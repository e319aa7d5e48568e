package org.footwell.calculation;

import java.nio.CharBuffer;
import java.util.List;
import java.util.stream.IntStream;

/** A row of cells whose characters lie in one array, so that numbers are read where they stand. */
public final class Row {

  private final char[] characters;
  private final int[] ends;

  /**
   * A row.
   *
   * @param characters those of all cells, a separator after each; not copied
   * @param ends for each cell the index after its last character; not copied
   */
  public Row(char[] characters, int[] ends) {
    this.characters = characters;
    this.ends = ends;
  }

  /** How many cells there are. */
  public int size() {
    return ends.length;
  }

  /** How many characters there are, separators counted. */
  public int characterCount() {
    return characters.length;
  }

  /** What stands in a cell. */
  public String text(int cell) {
    return new String(characters, start(cell), length(cell));
  }

  /** Whether the last cell ends with a character. */
  public boolean endsWith(char character) {
    return characters.length > 1 && characters[characters.length - 2] == character;
  }

  /** What stands in each cell. */
  public List<String> texts() {
    return IntStream.range(0, size()).mapToObj(this::text).toList();
  }

  /** Whether a spreadsheet would take a cell for a formula. */
  public boolean holdsFormula() {
    for (int i = 0; i < ends.length; i++) {
      // Few cells are looked at further: a batch asks of every row.
      if (CsvCell.canBeginFormula(characters[start(i)])
          && CsvCell.beginsFormula(CharBuffer.wrap(characters, start(i), length(i)))) {
        return true;
      }
    }
    return false;
  }

  /** Appends all cells as they stand, a separator after each. */
  public void appendTo(StringBuilder text) {
    text.append(characters);
  }

  char[] characters() {
    return characters;
  }

  int start(int cell) {
    return cell == 0 ? 0 : ends[cell - 1] + 1;
  }

  int length(int cell) {
    return ends[cell] - start(cell);
  }
}
