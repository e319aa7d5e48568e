package org.footwell.sheet;

import java.util.List;

/**
 * A table of figures.
 *
 * @param caption what they are, with their unit; null where a heading says it
 * @param corner what the columns are
 * @param columns heads of the columns
 */
public record FigureTable(String caption, String corner, List<String> columns, List<Row> rows) {

  /** One row: a figure for each column. */
  public record Row(String name, List<WrittenFigure> figures) {
    public Row {
      figures = List.copyOf(figures);
    }
  }

  public FigureTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }
}
