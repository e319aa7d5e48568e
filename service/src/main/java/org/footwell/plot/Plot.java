package org.footwell.plot;

import java.util.List;
import java.util.Locale;
import org.apache.commons.text.StringEscapeUtils;

/**
 * Curves over two axes as SVG. Every curve has a dash pattern of its own and its name in the legend, so
 * that colour is only a help; everything takes the colour of the text around it, light or dark, and
 * prints.
 *
 * @param id begins the ids within it; of letters, digits and hyphens, its own on a page
 * @param title what it shows
 * @param x from left to right
 * @param y from bottom to top
 */
public record Plot(String id, String title, Axis x, Axis y, List<Curve> curves) {

  static final int WIDTH = 720;
  private static final int LEFT = 64;
  private static final int RIGHT = 16;
  private static final int TOP = 16;
  private static final int HEIGHT = 300;
  private static final int BELOW = 48;
  private static final int LEGEND_ROW = 20;
  private static final int LEGEND_COLUMNS = 3;

  /** Dash patterns of curves found, in turn; the first is a full line. */
  private static final String[] DASHES = {
    "none", "8 3", "2 3", "10 3 2 3", "5 2", "1 2", "12 2", "8 2 2 2 2 2"
  };

  public Plot {
    curves = List.copyOf(curves);
  }

  /** The drawing, to stand in a page or by itself. */
  public String svg() {
    int height = height();
    StringBuilder out = new StringBuilder();
    put(
        out,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"plot\" viewBox=\"0 0 %d %d\" role=\"img\""
            + " aria-labelledby=\"%s-title\" font-family=\"sans-serif\" font-size=\"12\""
            + " fill=\"currentColor\">%n",
        WIDTH,
        height,
        id);
    put(out, "<title id=\"%s-title\">%s</title>%n", id, escaped(title));
    put(
        out,
        "<clipPath id=\"%s-area\"><rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\"/></clipPath>%n",
        id,
        LEFT,
        TOP,
        WIDTH - LEFT - RIGHT,
        HEIGHT);
    grid(out);
    put(out, "<g clip-path=\"url(#%s-area)\" fill=\"none\" stroke=\"currentColor\">%n", id);
    for (int i = 0; i < curves.size(); i++) {
      path(out, i);
    }
    put(out, "</g>%n");
    for (int i = 0; i < curves.size(); i++) {
      legend(out, i);
    }
    return put(out, "</svg>%n").toString();
  }

  /** How high it is drawn, in its own units, its width being {@value #WIDTH}. */
  int height() {
    int rows = (curves.size() + LEGEND_COLUMNS - 1) / LEGEND_COLUMNS;
    return TOP + HEIGHT + BELOW + rows * LEGEND_ROW + 8;
  }

  private void grid(StringBuilder out) {
    put(out, "<g class=\"grid\" stroke=\"currentColor\" stroke-width=\"0.5\">%n");
    for (Axis.Tick tick : x.ticks()) {
      double at = across(tick.value());
      put(
          out,
          "<path d=\"M%.1f %dV%d\" opacity=\"%s\"/>%n",
          at,
          TOP,
          TOP + HEIGHT,
          tick.text().isEmpty() ? "0.15" : "0.4");
    }
    for (Axis.Tick tick : y.ticks()) {
      put(
          out,
          "<path d=\"M%d %.1fH%d\" opacity=\"0.4\"/>%n",
          LEFT,
          down(tick.value()),
          WIDTH - RIGHT);
    }
    put(out, "</g>%n<g class=\"ticks\">%n");
    for (Axis.Tick tick : x.ticks()) {
      if (!tick.text().isEmpty()) {
        put(
            out,
            "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%s</text>%n",
            across(tick.value()),
            TOP + HEIGHT + 16,
            escaped(tick.text()));
      }
    }
    for (Axis.Tick tick : y.ticks()) {
      put(
          out,
          "<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%s</text>%n",
          LEFT - 6,
          down(tick.value()) + 4,
          escaped(tick.text()));
    }
    put(out, "</g>%n");
    put(
        out,
        "<text x=\"%d\" y=\"%d\" text-anchor=\"middle\">%s</text>%n",
        (LEFT + WIDTH - RIGHT) / 2,
        TOP + HEIGHT + 36,
        escaped(x.label()));
    put(
        out,
        "<text transform=\"translate(14 %d) rotate(-90)\" text-anchor=\"middle\">%s</text>%n",
        TOP + HEIGHT / 2,
        escaped(y.label()));
  }

  private void path(StringBuilder out, int i) {
    StringBuilder steps = new StringBuilder();
    boolean drawing = false;
    for (Curve.Point point : curves.get(i).points()) {
      if (point.finite()) {
        put(steps, "%s%.1f %.1f", drawing ? "L" : "M", across(point.x()), down(point.y()));
      }
      drawing = point.finite();
    }
    put(
        out,
        "<path d=\"%s\" %s><title>%s</title></path>%n",
        steps,
        stroke(i),
        escaped(curves.get(i).name()));
  }

  private void legend(StringBuilder out, int i) {
    double left = LEFT + (double) (i % LEGEND_COLUMNS) * (WIDTH - LEFT - RIGHT) / LEGEND_COLUMNS;
    int at = TOP + HEIGHT + BELOW + 8 + (i / LEGEND_COLUMNS) * LEGEND_ROW;
    put(
        out,
        "<path d=\"M%.1f %dh32\" fill=\"none\" stroke=\"currentColor\" %s/>%n",
        left,
        at,
        stroke(i));
    put(
        out,
        "<text x=\"%.1f\" y=\"%d\">%s</text>%n",
        left + 40,
        at + 4,
        escaped(shortened(curves.get(i).name())));
  }

  /** Of a long name as much as has room; all of it is the curve's title. */
  private static String shortened(String name) {
    int most = 28;
    return name.codePointCount(0, name.length()) <= most
        ? name
        : name.substring(0, name.offsetByCodePoints(0, most - 1)) + "…";
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

  private double across(double value) {
    return LEFT + x.at(value) * (WIDTH - LEFT - RIGHT);
  }

  private double down(double value) {
    return TOP + (1 - y.at(value)) * HEIGHT;
  }

  static String escaped(String text) {
    return StringEscapeUtils.escapeXml10(text);
  }

  private static StringBuilder put(StringBuilder out, String format, Object... values) {
    return out.append(String.format(Locale.ROOT, format.replace("%n", "\n"), values));
  }
}
