package org.footwell.plot;

import java.util.Locale;
import org.apache.commons.text.StringEscapeUtils;

/** A drawing being written. Everything takes the colour of the text around it, light or dark. */
public final class Svg {

  /** How high letters are. */
  static final int LETTERS = 12;

  /** Width of most letters, as a part of their height; rounded up, as fonts differ. */
  private static final double LETTER = 0.6;

  /** From here on scripts have letters as wide as they are high. */
  private static final int WIDE_SCRIPTS = 0x1100;

  private final StringBuilder out = new StringBuilder(16_384);

  private Svg() {}

  static String of(Drawing drawing, Drawing.Size size) {
    String id = drawing.id(size);
    Svg svg = new Svg();
    svg.put(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"plot\" viewBox=\"0 0 %d %d\" role=\"img\""
            + " aria-labelledby=\"%s-title\" aria-describedby=\"%s-desc\" font-family=\"sans-serif\""
            + " font-size=\"%d\" fill=\"currentColor\">\n",
        size.width(), drawing.height(size), id, id, LETTERS);
    svg.put("<title id=\"%s-title\">%s</title>\n", id, escaped(drawing.title()));
    svg.put("<desc id=\"%s-desc\">%s</desc>\n", id, escaped(drawing.description()));
    drawing.draw(svg, size);
    return svg.put("</svg>\n").out.toString();
  }

  /** Adds markup; numbers are written with a point. */
  Svg put(String format, Object... values) {
    out.append(String.format(Locale.ROOT, format, values));
    return this;
  }

  /** A line of text whose start, middle or end is at a place. */
  Svg text(double x, double y, String anchor, String text) {
    return put(
        "<text x=\"%.1f\" y=\"%.1f\"%s>%s</text>\n",
        x, y, anchor.equals("start") ? "" : " text-anchor=\"" + anchor + "\"", escaped(text));
  }

  /** A line of text in bold. */
  Svg heading(double x, double y, String text) {
    return put("<text x=\"%.1f\" y=\"%.1f\" font-weight=\"bold\">%s</text>\n", x, y, escaped(text));
  }

  /** A straight line with attributes of its own. */
  Svg line(double x1, double y1, double x2, double y2, String attributes) {
    return put(
        "<path d=\"M%.1f %.1fL%.1f %.1f\" fill=\"none\" stroke=\"currentColor\" %s/>\n",
        x1, y1, x2, y2, attributes);
  }

  static String escaped(String text) {
    return StringEscapeUtils.escapeXml10(text);
  }

  /** How wide a text is at most, about. */
  static double width(String text) {
    return text.codePoints().mapToDouble(c -> c < WIDE_SCRIPTS ? LETTER : 1).sum() * LETTERS;
  }

  /** Of a text as much as has room. */
  static String fitting(String text, double room) {
    if (width(text) <= room) {
      return text;
    }
    StringBuilder kept = new StringBuilder();
    double left = room - width("…");
    for (int c : text.codePoints().toArray()) {
      left -= width(Character.toString(c));
      if (left < 0) {
        break;
      }
      kept.appendCodePoint(c);
    }
    return kept + "…";
  }
}
