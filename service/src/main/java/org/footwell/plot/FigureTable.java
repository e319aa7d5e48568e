package org.footwell.plot;

import java.util.List;
import org.footwell.sheet.Figure;

/**
 * The figures of a drawing.
 *
 * @param caption what they are, with their unit
 * @param corner what the columns are
 * @param columns heads of the columns
 */
public record FigureTable(String caption, String corner, List<String> columns, List<Row> rows) {

  /** One row: a figure for each column. */
  public record Row(String name, List<Figure> figures) {
    public Row {
      figures = List.copyOf(figures);
    }
  }

  public FigureTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }
}
