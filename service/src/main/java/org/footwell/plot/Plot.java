package org.footwell.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

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
    Readings readings)
    implements Drawing {

  /** Dash patterns of curves found, in turn; the first is a full line. */
  private static final String[] DASHES = {
    "none", "8 3", "2 3", "10 3 2 3", "5 2", "1 2", "12 2", "8 2 2 2 2 2"
  };

  public Plot {
    curves = List.copyOf(curves);
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
    for (int i = 0; i < curves.size(); i++) {
      path(svg, i, frame);
    }
    svg.put("</g>\n");
    PlotLegend legend = legend(frame);
    for (int i = 0; i < curves.size(); i++) {
      legend.draw(svg, i, stroke(i), frame.end());
    }
    if (strips != null) {
      strips.draw(svg, frame, frame.end() + legend.height());
    }
  }

  private PlotFrame frame(Size size) {
    return new PlotFrame(size, x, y);
  }

  private PlotLegend legend(PlotFrame frame) {
    return new PlotLegend(curves.stream().map(Curve::name).toList(), frame);
  }

  private void path(Svg svg, int i, PlotFrame frame) {
    StringBuilder steps = new StringBuilder();
    boolean drawing = false;
    for (Curve.Point point : curves.get(i).points()) {
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
        steps, stroke(i), Svg.escaped(curves.get(i).name()));
  }

  private String stroke(int i) {
    return switch (curves.get(i).kind()) {
      case LIMIT -> "class=\"limit\" stroke-width=\"3\" stroke-dasharray=\"14 4\"";
      case WANTED -> "class=\"wanted\" stroke-width=\"4\" opacity=\"0.35\"";
      case FOUND ->
          "class=\"curve curve-"
              + (order(i) + 1)
              // Where the patterns begin again, the lines are thinner.
              + (order(i) < DASHES.length ? "\" stroke-width=\"1.8" : "\" stroke-width=\"0.9")
              + "\" stroke-dasharray=\""
              + DASHES[order(i) % DASHES.length]
              + "\"";
    };
  }

  /** Its place among the curves found. */
  private int order(int i) {
    return (int)
        curves.subList(0, i).stream().filter(one -> one.kind() == Curve.Kind.FOUND).count();
  }

  /** Nothing is interpolated: of each curve what it has at the place nearest to each column. */
  @Override
  public FigureTable table() {
    List<FigureTable.Row> rows = new ArrayList<>();
    for (Curve curve : curves) {
      rows.add(
          new FigureTable.Row(
              curve.name(),
              readings.at().stream()
                  .map(tick -> readings.figure().apply(curve.nearest(tick.value(), x)))
                  .toList()));
    }
    if (strips != null) {
      rows.addAll(strips.rows(readings.at(), x));
    }
    return new FigureTable(y.label(), x.label(), readings.columns(), rows);
  }
}
