package org.footwell.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.footwell.sheet.FigureTable;
import org.footwell.sheet.WrittenFigure;

/**
 * Curves over two axes as SVG. Every curve has a dash pattern of its own and its name in the legend, so
 * that colour is only a help; everything takes the colour of the text around it, light or dark, and
 * prints.
 *
 * @param x from left to right
 * @param y from bottom to top
 * @param strips what holds along {@code x}, or null
 * @param readings what its table shows
 */
public record Plot(
    String id,
    String title,
    String description,
    Axis x,
    Axis y,
    List<Curve> curves,
    Strips strips,
    TableColumns readings)
    implements Drawing {

  /** Dash patterns of curves found, in turn; the first is a full line. */
  private static final String[] DASHES = {
    "none", "8 3", "2 3", "10 3 2 3", "5 2", "1 2", "12 2", "8 2 2 2 2 2"
  };

  /** The same of limits. */
  private static final String[] LIMIT_DASHES = {"14 4", "14 4 4 4", "4 4"};

  public Plot {
    curves = List.copyOf(curves);
  }

  /** Curves that would lie on each other, such as left and right, are one with the names of both. */
  private List<Curve> drawn() {
    List<Curve> drawn = new ArrayList<>();
    for (Curve curve : curves) {
      int same = 0;
      while (same < drawn.size() && !drawn.get(same).coincides(curve, y)) {
        same++;
      }
      if (same == drawn.size()) {
        drawn.add(curve);
      } else {
        drawn.set(same, drawn.get(same).with(curve));
      }
    }
    return drawn;
  }

  @Override
  public int height(Size size) {
    PlotFrame frame = frame(size);
    int below = strips == null ? 0 : strips.height(frame);
    return (int) frame.end() + legend(frame).height() + below;
  }

  @Override
  public void draw(Svg svg, Size size) {
    PlotFrame frame = frame(size);
    svg.put(
        "<clipPath id=\"%s-area\"><rect x=\"%.0f\" y=\"%.0f\" width=\"%.0f\""
            + " height=\"%.0f\"/></clipPath>\n",
        id(size), frame.left(), frame.top(), frame.across(), frame.bottom() - frame.top());
    frame.draw(svg);
    svg.put("<g clip-path=\"url(#%s-area)\" fill=\"none\" stroke=\"currentColor\">\n", id(size));
    List<Curve> drawn = drawn();
    // What is wanted lies below, as paper lets nothing through.
    for (boolean below : new boolean[] {true, false}) {
      for (int i = 0; i < drawn.size(); i++) {
        if (below == (drawn.get(i).kind() == Curve.Kind.WANTED)) {
          path(svg, drawn, i, frame);
        }
      }
    }
    svg.put("</g>\n");
    PlotLegend legend = legend(frame);
    for (int i = 0; i < drawn.size(); i++) {
      legend.draw(svg, i, stroke(drawn, i), frame.end());
    }
    if (strips != null) {
      strips.draw(svg, frame, frame.end() + legend.height());
    }
  }

  private PlotFrame frame(Size size) {
    return new PlotFrame(size, x, y);
  }

  private PlotLegend legend(PlotFrame frame) {
    return new PlotLegend(drawn().stream().map(Curve::name).toList(), frame);
  }

  private static void path(Svg svg, List<Curve> drawn, int i, PlotFrame frame) {
    StringBuilder steps = new StringBuilder();
    boolean drawing = false;
    for (Curve.Point point : drawn.get(i).points()) {
      if (point.finite()) {
        steps.append(
            String.format(
                Locale.ROOT,
                "%s%.1f %.1f",
                drawing ? "L" : "M",
                frame.across(point.x()),
                frame.down(point.y())));
      }
      drawing = point.finite();
    }
    svg.put(
        "<path d=\"%s\" %s><title>%s</title></path>\n",
        steps, stroke(drawn, i), Svg.escaped(drawn.get(i).name()));
  }

  private static String stroke(List<Curve> drawn, int i) {
    int order = order(drawn, i);
    return switch (drawn.get(i).kind()) {
      case LIMIT ->
          "class=\"limit\" stroke-width=\"3\" stroke-dasharray=\""
              + LIMIT_DASHES[order % LIMIT_DASHES.length]
              + "\"";
      case WANTED -> "class=\"wanted\" stroke-width=\"4\" opacity=\"0.35\"";
      case FOUND ->
          "class=\"curve curve-"
              + (order + 1)
              // Where the patterns begin again, the lines are thinner.
              + (order < DASHES.length ? "\" stroke-width=\"1.8" : "\" stroke-width=\"0.9")
              + "\" stroke-dasharray=\""
              + DASHES[order % DASHES.length]
              + "\"";
    };
  }

  /** Its place among the curves of its kind. */
  private static int order(List<Curve> drawn, int i) {
    Curve.Kind kind = drawn.get(i).kind();
    return (int) drawn.subList(0, i).stream().filter(one -> one.kind() == kind).count();
  }

  /**
   * Nothing is interpolated: of each curve what it has at the place nearest to each column. Limits that are
   * the same everywhere stand in their names.
   */
  @Override
  public FigureTable table() {
    List<FigureTable.Row> rows = new ArrayList<>();
    for (Curve curve : curves) {
      if (curve.kind() != Curve.Kind.LIMIT) {
        rows.add(new FigureTable.Row(curve.name(), figures(curve)));
      }
    }
    if (strips == null) {
      return new FigureTable(y.label(), x.label(), readings.columns(), rows);
    }
    rows.addAll(strips.rows(readings.at(), x));
    String caption = y.label() + "; " + strips.meanings();
    return new FigureTable(caption, x.label(), readings.columns(), rows);
  }

  private List<WrittenFigure> figures(Curve curve) {
    return readings.at().stream()
        .map(tick -> readings.figure().apply(curve.nearest(tick.value(), x)))
        .toList();
  }
}
