package org.footwell.fitting.ring.drawing;

import static org.footwell.fitting.ring.drawing.Millimetres.text;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.apache.commons.text.StringEscapeUtils;
import org.apache.commons.text.WordUtils;

/** A ring drawn 1:1 as SVG, with a ruler that shows whether a printer kept the scale. */
public final class SvgDrawing {

  private static final double MARGIN = 10;
  private static final double LINE = 6;
  private static final double RULER = 50;

  /** The lines of text need this much, mm. */
  private static final double NARROWEST = 130;

  /** What a letter of the legend takes at most on average, mm. */
  private static final double LETTER = 2.4;

  /** Bold letters are so large that about so many fill the opening. */
  private static final double LETTERS_ACROSS = 9;

  private final DrawnRing drawn;
  private final RingGeometry ring;
  private final double across;
  private final double down;
  private final double width;
  private final StringBuilder out = new StringBuilder();

  private SvgDrawing(DrawnRing drawn) {
    this.drawn = drawn;
    this.ring = drawn.geometry();
    Oval all = ring.outer().around(ring.frame()).around(ring.panelCutOut());
    this.width = Math.max(NARROWEST, all.widthMm()) + 2 * MARGIN;
    this.across = width / 2;
    this.down = MARGIN + all.heightMm() / 2;
  }

  /** The file; one that does not fit is struck through and says why. */
  public static byte[] of(DrawnRing ring) {
    return new SvgDrawing(ring).draw().getBytes(StandardCharsets.UTF_8);
  }

  private String draw() {
    Oval all = ring.outer().around(ring.frame()).around(ring.panelCutOut());
    double legend = down + all.heightMm() / 2 + MARGIN;
    List<String> against = against();
    double height = legend + (6 + against.size()) * LINE;
    put("<?xml version=\"1.0\" encoding=\"UTF-8\"?>%n");
    put(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$smm\" height=\"%2$smm\""
            + " viewBox=\"0 0 %1$s %2$s\" font-family=\"sans-serif\" font-size=\"4\">%n",
        text(width), text(height));
    put("<title>Adapter ring, 1:1%s</title>%n", drawn.fits() ? "" : ": DOES NOT FIT");
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
    double y = legend(legend);
    if (!drawn.fits()) {
      strike(against, y);
    }
    return put("</svg>%n").toString();
  }

  /** What forbids the ring, in lines as wide as the drawing. */
  private List<String> against() {
    int letters = (int) ((width - 2 * MARGIN) / LETTER);
    return drawn.against().stream()
        .flatMap(finding -> WordUtils.wrap(finding.inFull(), letters).lines())
        .map(StringEscapeUtils::escapeXml10)
        .toList();
  }

  /** Across the whole ring in red, in large letters, and why below the legend. */
  private void strike(List<String> against, double from) {
    double x = ring.outer().widthMm() / 2;
    double y = ring.outer().heightMm() / 2;
    put("<g id=\"does-not-fit\" fill=\"red\" font-weight=\"bold\">%n");
    put(
        "<path stroke=\"red\" stroke-width=\"1\" d=\"M%1$s %2$sL%3$s %4$sM%1$s %4$sL%3$s %2$s\"/>%n",
        text(across - x), text(down - y), text(across + x), text(down + y));
    double size = ring.inner().widthMm() / LETTERS_ACROSS;
    String large = "text-anchor=\"middle\" font-size=\"" + text(size) + "\" ";
    words(across, down + 2 * size, large, "DOES NOT FIT");
    for (int i = 0; i < against.size(); i++) {
      words(MARGIN, from + (i + 1) * LINE, "", against.get(i));
    }
    put("</g>%n");
  }

  /** Where its last line stands. */
  private double legend(double from) {
    double y = from;
    String thick = text(drawn.thicknessMm());
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
    return y;
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
