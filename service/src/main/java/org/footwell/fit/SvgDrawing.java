package org.footwell.fit;

import static org.footwell.fit.Millimetres.text;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.footwell.fit.AdapterRingResult.RingGeometry;
import org.footwell.fit.AdapterRingResult.RingHole;

/** A ring drawn 1:1 as SVG, with a ruler that shows whether a printer kept the scale. */
final class SvgDrawing {

  private static final double MARGIN = 10;
  private static final double LINE = 6;
  private static final double RULER = 50;

  /** The lines of text need this much, mm. */
  private static final double NARROWEST = 130;

  private final RingGeometry ring;
  private final double across;
  private final double down;
  private final double width;
  private final StringBuilder out = new StringBuilder();

  private SvgDrawing(RingGeometry ring) {
    this.ring = ring;
    Oval all = ring.outer().around(ring.frame()).around(ring.panelCutOut());
    this.width = Math.max(NARROWEST, all.widthMm()) + 2 * MARGIN;
    this.across = width / 2;
    this.down = MARGIN + all.heightMm() / 2;
  }

  static byte[] of(AdapterRingResult result) {
    return new SvgDrawing(result.ring()).draw(result).getBytes(StandardCharsets.UTF_8);
  }

  private String draw(AdapterRingResult result) {
    Oval all = ring.outer().around(ring.frame()).around(ring.panelCutOut());
    double legend = down + all.heightMm() / 2 + MARGIN;
    double height = legend + 6 * LINE;
    put("<?xml version=\"1.0\" encoding=\"UTF-8\"?>%n");
    put(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$smm\" height=\"%2$smm\""
            + " viewBox=\"0 0 %1$s %2$s\" font-family=\"sans-serif\" font-size=\"4\">%n",
        text(width), text(height));
    put("<title>Adapter ring, 1:1</title>%n");
    put("<g fill=\"none\" stroke=\"black\" stroke-width=\"0.25\">%n");
    oval("outer", ring.outer(), "");
    oval("inner", ring.inner(), "");
    holes("factory-hole", "F", ring.factoryHoles());
    holes("pilot-hole", "P", ring.pilotHoles());
    put("</g>%n<g fill=\"none\" stroke=\"gray\" stroke-width=\"0.2\">%n");
    oval("panel-cut-out", ring.panelCutOut(), " stroke-dasharray=\"4 2\"");
    oval("frame", ring.frame(), " stroke-dasharray=\"1 1\"");
    put("</g>%n");
    double top = down - ring.inner().heightMm() / 2 + 2 * LINE;
    words(across, top, "text-anchor=\"middle\" ", "TOP");
    legend(result, legend);
    return put("</svg>%n").toString();
  }

  private void legend(AdapterRingResult result, double from) {
    double y = from;
    String thick = text(result.thicknessMm());
    words(MARGIN, y, "", "Adapter ring, " + thick + " mm thick, from the front. Print at 100 %.");
    y += LINE;
    words(MARGIN, y, "", "F: " + holes(ring.factoryHoles()) + " for the factory screws");
    y += LINE;
    words(MARGIN, y, "", "P: " + holes(ring.pilotHoles()) + ", pilots for the driver's screws");
    y += LINE;
    words(
        MARGIN, y, "", "Dashed: cut-out of the panel. Dotted: frame of the driver. Not to be cut.");
    y += LINE;
    put("<path id=\"ruler\" fill=\"none\" stroke=\"black\" stroke-width=\"0.25\" d=\"");
    put("M%s %sh%s", text(MARGIN), text(y), text(RULER));
    for (int tick = 0; tick <= RULER; tick += 10) {
      put("M%s %sv-2", text(MARGIN + tick), text(y));
    }
    put("\"/>%n");
    words(MARGIN + RULER + 3, y, "", "50 mm: measure it before cutting");
  }

  private static String holes(List<RingHole> holes) {
    return holes.size()
        + (holes.size() == 1 ? " hole " : " holes ")
        + text(holes.get(0).diameterMm())
        + " mm";
  }

  private void oval(String id, Oval oval, String style) {
    put(
        "<ellipse id=\"%s\" cx=\"%s\" cy=\"%s\" rx=\"%s\" ry=\"%s\"%s/>%n",
        id, text(across), text(down), text(oval.widthMm() / 2), text(oval.heightMm() / 2), style);
  }

  private void holes(String kind, String letter, List<RingHole> holes) {
    for (int i = 0; i < holes.size(); i++) {
      RingHole hole = holes.get(i);
      double x = across + hole.xMm();
      double y = down - hole.yMm();
      double radius = hole.diameterMm() / 2;
      put(
          "<circle class=\"%s\" cx=\"%s\" cy=\"%s\" r=\"%s\"/>%n",
          kind, text(x), text(y), text(radius));
      put(
          "<path d=\"M%s %sh%sM%s %sv%s\" stroke-width=\"0.15\"/>%n",
          text(x - radius - 1),
          text(y),
          text(2 * radius + 2),
          text(x),
          text(y - radius - 1),
          text(2 * radius + 2));
      words(
          x + radius + 0.5,
          y - radius,
          "fill=\"black\" stroke=\"none\" font-size=\"2.5\" ",
          letter + (i + 1));
    }
  }

  private void words(double x, double y, String style, String words) {
    put("<text %sx=\"%s\" y=\"%s\">%s</text>%n", style, text(x), text(y), words);
  }

  private StringBuilder put(String format, Object... arguments) {
    return out.append(String.format(Locale.ROOT, format, arguments).replace("\r\n", "\n"));
  }
}
