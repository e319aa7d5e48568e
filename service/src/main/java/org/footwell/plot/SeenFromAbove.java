package org.footwell.plot;

import java.util.List;
import org.footwell.sheet.FigureTable;
import org.footwell.sheet.WrittenFigure;

/**
 * Places in a vehicle to scale, seen from above: forward is up and left is left, as ISO 8855 has its axes.
 * One place is where others lead to; every place has a short sign, explained in the key beside it.
 *
 * @param words what stands at the drawing
 * @param columns what the figures of each source are
 */
public record SeenFromAbove(
    String id,
    String title,
    String description,
    AboveWords words,
    List<Column> columns,
    List<Spot> spots)
    implements Drawing {

  private static final int ROW = 20;
  private static final int LEAST_COLUMN = 54;
  private static final int APART = 8;
  private static final int MARGIN = 8;

  /** What a place is. */
  public enum Kind {
    /** Where all sources lead to. */
    GOAL,
    /** Another listening place. */
    SEAT,
    /** Where sound comes from. */
    SOURCE
  }

  /**
   * A place.
   *
   * @param sign a letter or a number
   * @param forwardM towards the front, m
   * @param leftM to the left, m
   * @param figures of its way to the goal, one for each column; none where it has none
   */
  public record Spot(
      String sign,
      String name,
      Kind kind,
      double forwardM,
      double leftM,
      List<WrittenFigure> figures) {
    public Spot {
      figures = List.copyOf(figures);
    }
  }

  /** What figures are, and their unit. */
  public record Column(String name, String unit) {}

  /**
   * What stands at the drawing.
   *
   * @param forward at the arrow
   * @param ruler unit of the scale bar
   * @param place head of the names
   * @param table what the figures are
   */
  public record AboveWords(String forward, Ruler ruler, String place, String table) {}

  /**
   * A unit of length.
   *
   * @param metres how long one is
   */
  public record Ruler(String unit, double metres) {}

  public SeenFromAbove {
    columns = List.copyOf(columns);
    spots = List.copyOf(spots);
  }

  /** As wide as the longest head of a column needs. */
  private double column() {
    double longest =
        columns.stream().mapToDouble(column -> Svg.width(column.name())).max().orElse(0);
    return Math.max(LEAST_COLUMN, longest + APART);
  }

  private Ground ground(Size size) {
    return new Ground(spots, size);
  }

  @Override
  public int height(Size size) {
    double key = ROW * (spots.size() + 3.0);
    return (int) (size == Size.WIDE ? Math.max(Ground.HEIGHT, key) : Ground.HEIGHT + key);
  }

  @Override
  public void draw(Svg svg, Size size) {
    ground(size).draw(svg, words);
    double left = size == Size.WIDE ? Ground.WIDTH + 2.0 * MARGIN : MARGIN;
    double top = size == Size.WIDE ? 0 : Ground.HEIGHT;
    double right = size.width() - (double) MARGIN;
    double y = top + 2.0 * ROW;
    svg.heading(left, y, words.place());
    for (int c = 0; c < columns.size(); c++) {
      double x = right - (columns.size() - 1.0 - c) * column();
      svg.text(x, y - ROW + 4, "end", columns.get(c).name());
      svg.text(x, y, "end", columns.get(c).unit());
    }
    y += 6;
    svg.line(left, y, right, y, "stroke-width=\"0.8\"");
    for (Spot spot : spots) {
      y += ROW;
      svg.heading(left, y - 2, spot.sign());
      double room = right - left - 24 - (spot.figures().isEmpty() ? 0 : columns.size() * column());
      svg.text(left + 22, y - 2, "start", Svg.fitting(spot.name(), room));
      for (int c = 0; c < spot.figures().size(); c++) {
        double x = right - (columns.size() - 1.0 - c) * column();
        svg.text(x, y - 2, "end", spot.figures().get(c).text());
      }
    }
  }

  @Override
  public FigureTable table() {
    return new FigureTable(
        words.table(),
        words.place(),
        columns.stream().map(column -> column.name() + ", " + column.unit()).toList(),
        spots.stream()
            .filter(spot -> !spot.figures().isEmpty())
            .map(spot -> new FigureTable.Row(spot.sign() + " " + spot.name(), spot.figures()))
            .toList());
  }
}
