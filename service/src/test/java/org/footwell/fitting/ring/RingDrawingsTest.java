package org.footwell.fitting.ring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Shown;
import org.footwell.calculation.View;
import org.footwell.calculation.text.Reader;
import org.footwell.fitting.ring.drawing.DrawnRing;
import org.footwell.fitting.ring.drawing.DxfDrawing;
import org.footwell.fitting.ring.drawing.RingSolid;
import org.footwell.fitting.ring.drawing.StlFile;
import org.footwell.fitting.ring.drawing.SvgDrawing;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class RingDrawingsTest {

  private final DrawnRing round = new RingDraft().drawn();
  private final DrawnRing oval = new RingDraft().ovalOpening().drawn();

  private static Document parsed(DrawnRing ring) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(SvgDrawing.of(ring)));
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute).replace("mm", ""));
  }

  /** Group codes and values in pairs. */
  private static List<String> pairs(DrawnRing ring) {
    String[] lines = new String(DxfDrawing.of(ring), StandardCharsets.US_ASCII).split("\r\n", -1);
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
    assertEquals(RingSolid.of(round).triangleCount(), triangles);
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
    double volume = new RingDraft().ovalOpening().result().volumeCm3();
    assertEquals(volume, six / 6 / 1000, 0.002 * volume);
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

  /** The grille allows 14 mm, and a factory hole breaks the outer edge. */
  private static RingDraft misfit() {
    RingDraft draft = new RingDraft();
    draft.ring.thicknessMm(18.0).outer(RingDraft.round(173));
    return draft;
  }

  private static byte[] view(String format, Answer<AdapterRingResult> answer) {
    return new AdapterRing()
        .card().views().stream()
            .filter(view -> view.format().equals(format))
            .findFirst()
            .orElseThrow()
            .draw()
            .apply(new Shown<>(null, answer, Reader.ANYONE));
  }

  @Test
  void aDrawingOfARingThatDoesNotFitIsStruckThroughAndSaysWhy() throws Exception {
    String svg = text(view("svg", misfit().answer()));
    assertTrue(svg.contains(">DOES NOT FIT</text>"), svg);
    assertTrue(svg.contains("<title>Adapter ring, 1:1: DOES NOT FIT</title>"), svg);
    assertTrue(svg.contains("At 18 mm the ring is too thick"), svg);
    assertTrue(svg.contains("Between a factory hole and the outer edge no wall is left"), svg);
    // Every line of the reasons lies within the page.
    Document page = parsed(misfit().drawn());
    double height = number(page.getDocumentElement(), "height");
    NodeList words = page.getElementsByTagName("text");
    assertTrue(number((Element) words.item(words.getLength() - 1), "y") < height);
    assertFalse(text(view("svg", new RingDraft().answer())).contains("DOES NOT FIT"));
  }

  @Test
  void aCutterIsToldWhatDoesNotFit() {
    List<String> pairs = pairs(misfit().drawn());
    assertEquals(1, count(pairs, "999 DOES NOT FIT: hits grille, hole breaks edge"));
    assertEquals(1, count(pairs, "1 DOES NOT FIT: "));
    assertEquals(1, count(pairs, "1 HITS GRILLE"));
    assertEquals(1, count(pairs, "1 HOLE BREAKS EDGE"));
    assertEquals(2, count(pairs, "0 LINE"));
    assertEquals(0, count(pairs(round), "0 LINE"));
    assertTrue(pairs(round).stream().noneMatch(pair -> pair.contains("DOES NOT FIT")));
  }

  @Test
  void noSolidIsMadeOfARingThatDoesNotFit() {
    Answer<AdapterRingResult> answer = misfit().answer();
    List<Fault> faults = assertThrows(Refused.class, () -> view("stl", answer)).faults();
    assertEquals(2, faults.size());
    assertEquals("ring-does-not-fit", faults.get(0).code());
    assertEquals("/opening/grille_mm", faults.get(0).pointer());
    assertTrue(faults.get(0).detail().contains("too thick"), faults.get(0).detail());
    assertTrue(view("stl", new RingDraft().answer()).length > 84);
    // Whoever makes the file all the same finds it in its text.
    String header = new String(StlFile.of(misfit().drawn()), 0, 80, StandardCharsets.US_ASCII);
    assertTrue(header.startsWith("DOES NOT FIT: hits grille"), header);
  }

  @Test
  void theCardOffersSolidAndDrawings() {
    assertEquals(
        List.of("stl", "svg", "dxf"),
        new AdapterRing().card().views().stream().map(View::format).toList());
  }
}
