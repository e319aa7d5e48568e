package org.footwell.plot;

import java.util.List;

/**
 * Names of the curves of a plot below it, in as many columns as the longest has room.
 *
 * @param names of all curves
 */
record PlotLegend(List<String> names, PlotFrame frame) {

  private static final int ROW = 20;
  private static final int LINE = 32;
  private static final int GAP = 8;
  private static final int MOST_COLUMNS = 3;

  private int columns() {
    double longest = names.stream().mapToDouble(Svg::width).max().orElse(0) + LINE + 2 * GAP;
    return (int) Math.max(1, Math.min(MOST_COLUMNS, frame.across() / longest));
  }

  int height() {
    return (names.size() + columns() - 1) / columns() * ROW + GAP;
  }

  /** One name, behind a piece of its curve. */
  void draw(Svg svg, int i, String stroke, double top) {
    double wide = frame.across() / columns();
    double x = frame.left() + i % columns() * wide;
    int row = i / columns();
    double y = top + GAP + (double) row * ROW;
    svg.line(x, y, x + LINE, y, stroke);
    svg.text(x + LINE + GAP, y + 4, "start", Svg.fitting(names.get(i), wide - LINE - 2 * GAP));
  }
}
