package org.footwell.vehicle.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.text.StringEscapeUtils;
import org.footwell.electrical.load.Network;

/**
 * Voice coils in series and in parallel between two terminals as SVG, with the parts of a ladder before
 * them. The wire in is at the left, the way back runs below.
 */
final class WiringDiagram {

  private static final int BOX_HIGH = 32;
  private static final int GAP = 16;
  private static final int LETTER = 7;
  private static final int LEFT = 28;
  private static final int FONT = 12;

  /** A page has no more room, in pixels of CSS. */
  private static final double MOST_WIDE = 670;

  private static final double MOST_HIGH = 850;

  /** Something that a wire enters at the left and leaves at the right, both at half its height. */
  private record Block(double width, double height, Painter painter) {}

  private interface Painter {
    /** Draws it with its left end at a place on the wire. */
    void at(WiringDiagram out, double x, double y);
  }

  /**
   * A part of the ladder before the coils.
   *
   * @param across whether it lies across both wires
   */
  record Element(String label, boolean across) {}

  private final StringBuilder drawn = new StringBuilder();

  private WiringDiagram() {}

  /**
   * The drawing.
   *
   * @param title what it shows, for who cannot see it
   * @param coils each by what stands in its box
   */
  static String svg(String id, String title, List<Element> ladder, Network<String> coils) {
    Block network = coils.fold(WiringDiagram::coil, WiringDiagram::series, WiringDiagram::parallel);
    boolean shunted = ladder.stream().anyMatch(Element::across);
    double top = network.height() / 2 + 4;
    double back = top + Math.max(network.height() / 2 + GAP, shunted ? BOX_HIGH * 2.0 : GAP);
    WiringDiagram out = new WiringDiagram();
    double x = LEFT;
    out.text(4, top + 4, "start", "+");
    out.text(4, back + 4, "start", "−");
    for (Element element : ladder) {
      Block box = coil(element.label());
      if (element.across()) {
        out.wire(x, top, x + GAP, top);
        out.across(element.label(), box.width(), x + GAP + box.width() / 2, top, back);
        out.wire(x + GAP, top, x + 2 * GAP + box.width(), top);
        x += 2 * GAP + box.width();
      } else {
        out.wire(x, top, x + GAP, top);
        box.painter().at(out, x + GAP, top);
        x += GAP + box.width();
      }
    }
    out.wire(x, top, x + GAP, top);
    network.painter().at(out, x + GAP, top);
    double right = x + 2 * GAP + network.width();
    out.wire(right - GAP, top, right, top);
    out.wire(right, top, right, back);
    out.wire(right, back, LEFT, back);
    double scale = Math.min(1, Math.min(MOST_WIDE / (right + 4), MOST_HIGH / (back + 8)));
    return String.format(
        Locale.ROOT,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"diagram\" viewBox=\"0 0 %.0f %.0f\""
            + " style=\"width: %.0fpx\" role=\"img\" aria-labelledby=\"%s\" font-size=\"%d\""
            + " font-family=\"sans-serif\" fill=\"currentColor\"><title id=\"%s\">%s</title>%s</svg>",
        right + 4,
        back + 8,
        scale * (right + 4),
        id,
        FONT,
        id,
        escaped(title),
        out.drawn);
  }

  private static Block coil(String label) {
    double width = LETTER * label.codePointCount(0, label.length()) + 12.0;
    return new Block(width, BOX_HIGH, (out, x, y) -> out.box(x, y, width, label));
  }

  private static Block series(List<Block> parts) {
    double width = parts.stream().mapToDouble(Block::width).sum() + GAP * (parts.size() - 1.0);
    double height = parts.stream().mapToDouble(Block::height).max().orElseThrow();
    return new Block(
        width,
        height,
        (out, x, y) -> {
          double at = x;
          for (Block part : parts) {
            if (at > x) {
              out.wire(at - GAP, y, at, y);
            }
            part.painter().at(out, at, y);
            at += part.width() + GAP;
          }
        });
  }

  private static Block parallel(List<Block> parts) {
    double widest = parts.stream().mapToDouble(Block::width).max().orElseThrow();
    double height = parts.stream().mapToDouble(Block::height).sum() + 8.0 * (parts.size() - 1);
    double width = widest + 2 * GAP;
    return new Block(
        width,
        height,
        (out, x, y) -> {
          List<Double> rows = new ArrayList<>();
          double top = y - height / 2;
          for (Block part : parts) {
            double row = top + part.height() / 2;
            double start = x + (width - part.width()) / 2;
            out.wire(x, row, start, row);
            part.painter().at(out, start, row);
            out.wire(start + part.width(), row, x + width, row);
            rows.add(row);
            top += part.height() + 8;
          }
          out.wire(x, rows.get(0), x, rows.get(rows.size() - 1));
          out.wire(x + width, rows.get(0), x + width, rows.get(rows.size() - 1));
        });
  }

  private void across(String label, double width, double middle, double top, double back) {
    double y = (top + back) / 2;
    wire(middle, top, middle, y - BOX_HIGH / 2.0);
    box(middle - width / 2, y, width, label);
    wire(middle, y + BOX_HIGH / 2.0, middle, back);
  }

  private void box(double x, double y, double width, String label) {
    drawn.append(
        String.format(
            Locale.ROOT,
            "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%d\" fill=\"none\""
                + " stroke=\"currentColor\"/>",
            x,
            y - BOX_HIGH / 2.0,
            width,
            BOX_HIGH));
    text(x + width / 2, y + 4, "middle", label);
  }

  private void wire(double x1, double y1, double x2, double y2) {
    drawn.append(
        String.format(
            Locale.ROOT,
            "<path d=\"M%.1f %.1fL%.1f %.1f\" fill=\"none\" stroke=\"currentColor\"/>",
            x1,
            y1,
            x2,
            y2));
  }

  private void text(double x, double y, String anchor, String text) {
    drawn.append(
        String.format(
            Locale.ROOT,
            "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>",
            x,
            y,
            anchor,
            escaped(text)));
  }

  private static String escaped(String text) {
    return StringEscapeUtils.escapeXml10(text);
  }
}
