package org.footwell.fitting.ring.drawing;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.footwell.calculation.Source;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;

/**
 * A ring drawn 1:1 in mm as DXF of Release 12, which every cutter reads. That release knows no
 * ellipse and no unit: ovals are closed polylines, the unit stands in a comment and a text.
 */
public final class DxfDrawing {

  public static final Source FORMAT =
      Source.of("Drawing Interchange and File Formats, Release 12 (1992): DXF group codes");

  private static final String OUTER = "OUTER_EDGE";
  private static final String INNER = "INNER_EDGE";
  private static final String FACTORY = "FACTORY_HOLES";
  private static final String PILOT = "PILOT_HOLES";

  /** Frame and panel cut-out, not to be cut. */
  private static final String REFERENCE = "REFERENCE";

  private static final String TEXT = "TEXT";

  /** What strikes a ring through that does not fit. */
  private static final String STRUCK = "DOES_NOT_FIT";

  private static final String DOES_NOT_FIT = "DOES NOT FIT: ";
  private static final double TEXT_HEIGHT = 4;

  /** Letters of the mark are so high that about so many fill the opening. */
  private static final double LETTERS_ACROSS = 15;

  /** Old programs expect lines to end so. */
  private static final String LINE_END = "\r\n";

  private final StringBuilder out = new StringBuilder();

  private DxfDrawing() {}

  /** The file; one that does not fit is struck through and says why. */
  public static byte[] of(DrawnRing ring) {
    return new DxfDrawing().draw(ring).getBytes(StandardCharsets.US_ASCII);
  }

  private String draw(DrawnRing drawn) {
    RingGeometry ring = drawn.geometry();
    pair(999, "Adapter ring, units mm, scale 1:1");
    if (!drawn.fits()) {
      pair(999, DOES_NOT_FIT + String.join(", ", drawn.reasons()));
    }
    header(ring.outer());
    tables();
    section("ENTITIES");
    oval(OUTER, ring.outer(), Plate.inscribed(ring.outer(), ring.arcToleranceMm()));
    oval(INNER, ring.inner(), Plate.circumscribed(ring.inner(), ring.arcToleranceMm()));
    ring.factoryHoles().forEach(hole -> circle(FACTORY, hole));
    ring.pilotHoles().forEach(hole -> circle(PILOT, hole));
    oval(REFERENCE, ring.frame(), Plate.inscribed(ring.frame(), ring.arcToleranceMm()));
    oval(REFERENCE, ring.panelCutOut(), Plate.inscribed(ring.panelCutOut(), ring.arcToleranceMm()));
    double below = -ring.outer().heightMm() / 2;
    words(TEXT, 0, below - 3 * TEXT_HEIGHT, TEXT_HEIGHT, "UNITS MM, SEEN FROM THE FRONT");
    String thickness = "THICKNESS " + Millimetres.text(drawn.thicknessMm());
    words(TEXT, 0, below - 5 * TEXT_HEIGHT, TEXT_HEIGHT, thickness);
    if (!drawn.fits()) {
      strike(ring, drawn.reasons());
    }
    pair(0, "ENDSEC");
    pair(0, "EOF");
    return out.toString();
  }

  private void header(Oval outer) {
    section("HEADER");
    pair(9, "$ACADVER");
    pair(1, "AC1009");
    pair(9, "$EXTMIN");
    point(-outer.widthMm() / 2, -outer.heightMm() / 2);
    pair(9, "$EXTMAX");
    point(outer.widthMm() / 2, outer.heightMm() / 2);
    pair(0, "ENDSEC");
  }

  private void tables() {
    section("TABLES");
    table("LTYPE", 1);
    pair(0, "LTYPE");
    pair(2, "CONTINUOUS");
    pair(70, "0");
    pair(3, "Solid line");
    pair(72, "65");
    pair(73, "0");
    pair(40, "0");
    pair(0, "ENDTAB");
    List<String> layers = List.of(OUTER, INNER, FACTORY, PILOT, REFERENCE, TEXT, STRUCK);
    table("LAYER", layers.size());
    for (int i = 0; i < layers.size(); i++) {
      pair(0, "LAYER");
      pair(2, layers.get(i));
      pair(70, "0");
      pair(62, Integer.toString(i + 1));
      pair(6, "CONTINUOUS");
    }
    pair(0, "ENDTAB");
    pair(0, "ENDSEC");
  }

  private void oval(String layer, Oval oval, LinearRing corners) {
    if (oval.circular()) {
      circle(layer, new RingHole(0, 0, oval.widthMm()));
      return;
    }
    pair(0, "POLYLINE");
    pair(8, layer);
    pair(66, "1");
    point(0, 0);
    pair(70, "1");
    Coordinate[] all = corners.getCoordinates();
    for (int i = 1; i < all.length; i++) {
      pair(0, "VERTEX");
      pair(8, layer);
      point(all[i].x, all[i].y);
    }
    pair(0, "SEQEND");
    pair(8, layer);
  }

  private void circle(String layer, RingHole hole) {
    pair(0, "CIRCLE");
    pair(8, layer);
    point(hole.xMm(), hole.yMm());
    pair(40, Millimetres.text(hole.diameterMm() / 2));
  }

  /** Across the whole ring, on a layer of its own, and the reasons in its opening. */
  private void strike(RingGeometry ring, List<String> reasons) {
    double x = ring.outer().widthMm() / 2;
    double y = ring.outer().heightMm() / 2;
    line(-x, -y, x, y);
    line(-x, y, x, -y);
    double left = -0.4 * ring.inner().widthMm();
    double height = ring.inner().widthMm() / LETTERS_ACROSS;
    words(STRUCK, left, height, height, DOES_NOT_FIT);
    for (int i = 0; i < reasons.size(); i++) {
      String reason = reasons.get(i).toUpperCase(Locale.ROOT);
      words(STRUCK, left, -(i + 1) * 2 * TEXT_HEIGHT, TEXT_HEIGHT, reason);
    }
  }

  private void line(double fromX, double fromY, double toX, double toY) {
    pair(0, "LINE");
    pair(8, STRUCK);
    point(fromX, fromY);
    pair(11, Millimetres.text(toX));
    pair(21, Millimetres.text(toY));
    pair(31, "0");
  }

  private void words(String layer, double x, double y, double height, String words) {
    pair(0, "TEXT");
    pair(8, layer);
    point(x, y);
    pair(40, Millimetres.text(height));
    pair(1, words);
  }

  private void section(String name) {
    pair(0, "SECTION");
    pair(2, name);
  }

  private void table(String name, int entries) {
    pair(0, "TABLE");
    pair(2, name);
    pair(70, Integer.toString(entries));
  }

  private void point(double x, double y) {
    pair(10, Millimetres.text(x));
    pair(20, Millimetres.text(y));
    pair(30, "0");
  }

  private void pair(int code, String value) {
    out.append(code).append(LINE_END).append(value).append(LINE_END);
  }
}
