package org.footwell.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.footwell.calculation.View;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class RingDrawingsTest {

  private final AdapterRingResult round = new RingDraft().result();
  private final AdapterRingResult oval = new RingDraft().ovalOpening().result();

  private static Document parsed(AdapterRingResult result) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(SvgDrawing.of(result)));
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute).replace("mm", ""));
  }

  /** Group codes and values in pairs. */
  private static List<String> pairs(AdapterRingResult result) {
    String[] lines = new String(DxfDrawing.of(result), StandardCharsets.US_ASCII).split("\r\n", -1);
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i + 1 < lines.length; i += 2) {
      pairs.add(lines[i] + " " + lines[i + 1]);
    }
    return pairs;
  }

  private static long count(List<String> pairs, String pair) {
    return pairs.stream().filter(pair::equals).count();
  }

  @Test
  void theStlFileIsLaidOutAsItsFormatSays() {
    byte[] file = StlFile.of(round);
    ByteBuffer in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    assertFalse(new String(file, 0, 5, StandardCharsets.US_ASCII).equals("solid"));
    int triangles = in.getInt(80);
    assertEquals(RingSolid.of(round).triangles().size(), triangles);
    assertEquals(80 + 4 + 50 * triangles, file.length);
  }

  @Test
  void everyNormalOfTheStlFileHasLengthOneAndFollowsTheRightHand() {
    ByteBuffer in = ByteBuffer.wrap(StlFile.of(oval)).order(ByteOrder.LITTLE_ENDIAN);
    in.position(84);
    double six = 0;
    while (in.hasRemaining()) {
      double[] f = new double[12];
      for (int i = 0; i < 12; i++) {
        f[i] = in.getFloat();
      }
      assertEquals(0, in.getShort());
      double nx = (f[7] - f[4]) * (f[11] - f[5]) - (f[8] - f[5]) * (f[10] - f[4]);
      double ny = (f[8] - f[5]) * (f[9] - f[3]) - (f[6] - f[3]) * (f[11] - f[5]);
      double nz = (f[6] - f[3]) * (f[10] - f[4]) - (f[7] - f[4]) * (f[9] - f[3]);
      assertTrue(nx * f[0] + ny * f[1] + nz * f[2] > 0);
      assertEquals(1, f[0] * f[0] + f[1] * f[1] + f[2] * f[2], 1e-6);
      six += f[3] * nx + f[4] * ny + f[5] * nz;
    }
    assertEquals(oval.volumeCm3(), six / 6 / 1000, 0.002 * oval.volumeCm3());
  }

  @Test
  void theSvgDrawingIsOneToOne() throws Exception {
    Document svg = parsed(round);
    Element root = svg.getDocumentElement();
    assertTrue(root.getAttribute("width").endsWith("mm"));
    assertEquals(
        "0 0 " + root.getAttribute("width") + " " + root.getAttribute("height"),
        root.getAttribute("viewBox").replaceAll("(\\S+) (\\S+)$", "$1mm $2mm"));
    NodeList ovals = svg.getElementsByTagName("ellipse");
    assertEquals("outer", ((Element) ovals.item(0)).getAttribute("id"));
    assertEquals(90.75, number((Element) ovals.item(0), "rx"), 1e-9);
    assertEquals(72, number((Element) ovals.item(1), "ry"), 1e-9);
    assertEquals(7, svg.getElementsByTagName("circle").getLength());
  }

  @Test
  void theFirstFactoryHoleIsDrawnAtTheTop() throws Exception {
    Document svg = parsed(round);
    Element outer = (Element) svg.getElementsByTagName("ellipse").item(0);
    Element hole = (Element) svg.getElementsByTagName("circle").item(0);
    assertEquals("factory-hole", hole.getAttribute("class"));
    assertEquals(number(outer, "cx"), number(hole, "cx"), 1e-3);
    assertEquals(number(outer, "cy") - 85, number(hole, "cy"), 1e-3);
  }

  @Test
  void theRulerMeasuresFiftyMillimetres() {
    String svg = new String(SvgDrawing.of(round), StandardCharsets.UTF_8);
    assertTrue(svg.contains("h50M"));
    assertTrue(svg.contains("50 mm: measure it before cutting"));
    assertTrue(svg.contains("F: 3 holes 5.5 mm for the factory screws"));
    assertTrue(svg.contains("P: 4 holes 3.2 mm, pilots"));
  }

  @Test
  void theDxfDrawingHasACircleForEveryHoleOnItsLayer() {
    List<String> pairs = pairs(round);
    assertEquals("999 Adapter ring, units mm, scale 1:1", pairs.get(0));
    assertEquals("0 EOF", pairs.get(pairs.size() - 1));
    assertEquals(2 + 7 + 2, count(pairs, "0 CIRCLE"));
    assertEquals(3, count(pairs, "8 FACTORY_HOLES"));
    assertEquals(4, count(pairs, "8 PILOT_HOLES"));
    assertEquals(3, count(pairs, "40 2.75"));
    assertEquals(4, count(pairs, "40 1.6"));
    assertEquals(1, count(pairs, "40 90.75"));
    assertEquals(count(pairs, "0 SECTION"), count(pairs, "0 ENDSEC"));
  }

  @Test
  void ovalsAreClosedPolylinesInTheDxfDrawing() {
    List<String> pairs = pairs(oval);
    // The outer edge and the panel's cut-out.
    assertEquals(2, count(pairs, "0 POLYLINE"));
    assertEquals(2, count(pairs, "0 SEQEND"));
    assertEquals(2, count(pairs, "66 1"));
    assertTrue(count(pairs, "0 VERTEX") > 200);
  }

  @Test
  void drawingsAreTheSameWhereverTheServerStands() {
    Locale before = Locale.getDefault();
    byte[] svg = SvgDrawing.of(oval);
    byte[] dxf = DxfDrawing.of(oval);
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals(text(svg), text(SvgDrawing.of(oval)));
      assertEquals(text(dxf), text(DxfDrawing.of(oval)));
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(text(svg), text(SvgDrawing.of(oval)));
    } finally {
      Locale.setDefault(before);
    }
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  @Test
  void theCardOffersSolidAndDrawings() {
    assertEquals(
        List.of("stl", "svg", "dxf"),
        new AdapterRing().card().views().stream().map(View::format).toList());
  }
}
