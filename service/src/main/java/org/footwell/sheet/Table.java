package org.footwell.sheet;

import java.util.List;

/**
 * A table of figures.
 *
 * @param heads of its columns, the one of the row heads first
 */
public record Table(List<String> heads, List<Row> rows) {

  /** A row of cells after its head. */
  public record Row(String head, List<Figure> cells) {}
}
