package org.footwell.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.footwell.sheet.FigureTable;
import org.footwell.sheet.WrittenFigure;

/**
 * Values of one kind as marks in rows over one axis: a full and an open dot for two values, a bar for what
 * they must not fall below.
 *
 * @param corner what the rows are
 * @param marks what each mark is, in the order full dot, open dot, bar
 * @param figure a value without its unit
 */
public record Dots(
    String id,
    String title,
    String description,
    Axis x,
    String corner,
    List<String> marks,
    List<Group> groups,
    DoubleFunction<WrittenFigure> figure)
    implements Drawing {

  private static final int TOP = 8;
  private static final int ROW = 24;
  private static final int BELOW = 48;
  private static final int RIGHT = 16;
  private static final int GAP = 8;
  private static final int BAR = 9;

  /** How wide an open dot is from its middle; a full one has room in it. */
  private static final double OPEN = 6.5;

  /**
   * Rows that belong together.
   *
   * @param rows none where there is nothing to show
   * @param instead what is said where there are none
   */
  public record Group(String name, List<Row> rows, String instead) {
    public Group {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One row.
   *
   * @param values one for each kind of mark; not finite where there is none
   */
  public record Row(String name, List<Double> values) {
    public Row {
      values = List.copyOf(values);
    }
  }

  public Dots {
    marks = List.copyOf(marks);
    groups = List.copyOf(groups);
  }

  @Override
  public int height(Size size) {
    return TOP + lines() * ROW + BELOW + ROW * (size == Size.WIDE ? 1 : marks.size());
  }

  /** Each group has its name above its rows. */
  private int lines() {
    return groups.stream().mapToInt(group -> 1 + group.rows().size()).sum();
  }

  private static double left(Size size) {
    return size == Size.WIDE ? 220 : 120;
  }

  private double across(double value, Size size) {
    return left(size) + x.at(value) * (size.width() - RIGHT - left(size));
  }

  @Override
  public void draw(Svg svg, Size size) {
    double bottom = TOP + (double) lines() * ROW;
    axis(svg, size, bottom);
    double y = TOP;
    for (Group group : groups) {
      String name = group.rows().isEmpty() ? group.name() + ": " + group.instead() : group.name();
      svg.heading(GAP, y + ROW - GAP, Svg.fitting(name, size.width() - 2.0 * GAP));
      y += ROW;
      for (Row row : group.rows()) {
        row(svg, row, size, y + ROW / 2.0);
        y += ROW;
      }
    }
    legend(svg, size, bottom + BELOW);
  }

  private void axis(Svg svg, Size size, double bottom) {
    svg.put("<g class=\"grid\">\n");
    for (Axis.Tick tick : x.ticks()) {
      double at = across(tick.value(), size);
      svg.line(at, TOP, at, bottom, "stroke-width=\"0.5\" opacity=\"0.4\"");
      svg.text(at, bottom + 16, "middle", tick.text());
    }
    svg.put("</g>\n");
    svg.text((left(size) + size.width() - RIGHT) / 2, bottom + 36, "middle", x.label());
  }

  private void row(Svg svg, Row row, Size size, double y) {
    svg.text(left(size) - GAP, y + 4, "end", Svg.fitting(row.name(), left(size) - 2 * GAP));
    List<Double> dots =
        row.values().subList(0, 2).stream().filter(value -> Double.isFinite(value)).toList();
    if (dots.size() == 2
        && Math.abs(across(dots.get(0), size) - across(dots.get(1), size)) > OPEN) {
      double open = across(dots.get(1), size);
      double away = Math.signum(across(dots.get(0), size) - open) * OPEN;
      svg.line(across(dots.get(0), size), y, open + away, y, "stroke-width=\"1\"");
    }
    for (int m = 0; m < row.values().size(); m++) {
      if (Double.isFinite(row.values().get(m))) {
        mark(svg, m, across(row.values().get(m), size), y);
      }
    }
  }

  private static void mark(Svg svg, int kind, double x, double y) {
    switch (kind) {
      case 0 -> svg.put("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\"/>\n", x, y);
      case 1 ->
          svg.put(
              "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"6.5\" fill=\"none\" stroke=\"currentColor\""
                  + " stroke-width=\"1.8\"/>\n",
              x, y);
      default -> svg.line(x, y - BAR, x, y + BAR, "stroke-width=\"3\" class=\"limit\"");
    }
  }

  private void legend(Svg svg, Size size, double top) {
    for (int m = 0; m < marks.size(); m++) {
      boolean wide = size == Size.WIDE;
      double x = GAP + (wide ? m * (size.width() - 2.0 * GAP) / marks.size() : 0);
      double y = top + (wide ? 0 : m * ROW) + ROW / 2.0;
      mark(svg, m, x + GAP, y);
      double room = size.width() / (wide ? marks.size() : 1.0) - 4 * GAP;
      svg.text(x + 3 * GAP, y + 4, "start", Svg.fitting(marks.get(m), room));
    }
  }

  @Override
  public FigureTable table() {
    List<FigureTable.Row> rows = new ArrayList<>();
    for (Group group : groups) {
      if (group.rows().isEmpty()) {
        rows.add(
            row(
                group.name() + ": " + group.instead(),
                marks.stream().map(m -> Double.NaN).toList()));
      }
      for (Row row : group.rows()) {
        rows.add(row(group.name() + ": " + row.name(), row.values()));
      }
    }
    return new FigureTable(x.label(), corner, marks, rows);
  }

  private FigureTable.Row row(String name, List<Double> values) {
    return new FigureTable.Row(name, values.stream().map(figure::apply).toList());
  }
}
