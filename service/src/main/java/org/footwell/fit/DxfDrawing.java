package org.footwell.fit;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.footwell.calculation.Source;
import org.footwell.fit.AdapterRingResult.RingGeometry;
import org.footwell.fit.AdapterRingResult.RingHole;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;

/**
 * A ring drawn 1:1 in mm as DXF of Release 12, which every cutter reads. That release knows no
 * ellipse and no unit: ovals are closed polylines, the unit stands in a comment and a text.
 */
final class DxfDrawing {

  static final Source FORMAT =
      Source.of("Drawing Interchange and File Formats, Release 12 (1992): DXF group codes");

  private static final String OUTER = "OUTER_EDGE";
  private static final String INNER = "INNER_EDGE";
  private static final String FACTORY = "FACTORY_HOLES";
  private static final String PILOT = "PILOT_HOLES";

  /** Frame and panel cut-out, not to be cut. */
  private static final String REFERENCE = "REFERENCE";

  private static final String TEXT = "TEXT";
  private static final double TEXT_HEIGHT = 4;

  /** Old programs expect lines to end so. */
  private static final String LINE_END = "\r\n";

  private final StringBuilder out = new StringBuilder();

  private DxfDrawing() {}

  static byte[] of(AdapterRingResult result) {
    return new DxfDrawing().draw(result).getBytes(StandardCharsets.US_ASCII);
  }

  private String draw(AdapterRingResult result) {
    RingGeometry ring = result.ring();
    pair(999, "Adapter ring, units mm, scale 1:1");
    header(ring.outer());
    tables();
    section("ENTITIES");
    oval(OUTER, ring.outer(), Plate.inscribed(ring.outer(), ring.arcToleranceMm()));
    oval(INNER, ring.inner(), Plate.circumscribed(ring.inner(), ring.arcToleranceMm()));
    ring.factoryHoles().forEach(hole -> circle(FACTORY, hole));
    ring.pilotHoles().forEach(hole -> circle(PILOT, hole));
    oval(REFERENCE, ring.frame(), Plate.inscribed(ring.frame(), ring.arcToleranceMm()));
    oval(REFERENCE, ring.panelCutOut(), Plate.inscribed(ring.panelCutOut(), ring.arcToleranceMm()));
    words(-ring.outer().heightMm() / 2 - 3 * TEXT_HEIGHT, "UNITS MM, SEEN FROM THE FRONT");
    words(
        -ring.outer().heightMm() / 2 - 5 * TEXT_HEIGHT,
        "THICKNESS " + Millimetres.text(result.thicknessMm()));
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
    List<String> layers = List.of(OUTER, INNER, FACTORY, PILOT, REFERENCE, TEXT);
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

  private void words(double y, String words) {
    pair(0, "TEXT");
    pair(8, TEXT);
    point(0, y);
    pair(40, Millimetres.text(TEXT_HEIGHT));
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
