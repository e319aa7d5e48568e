package org.footwell.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Reader;
import org.footwell.sheet.FigureTable;
import org.footwell.sheet.FigureWriter;
import org.footwell.sheet.WrittenFigure;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Axes and plots. */
class PlotTest {

  private static final FigureWriter FIGURES = new FigureWriter(Reader.ANYONE);

  private static WrittenFigure bare(double value) {
    return Double.isFinite(value)
        ? new WrittenFigure(value, FIGURES.bare(Measure.DB, value))
        : FIGURES.of(Measure.DB, null);
  }

  private static Document parsed(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }

  private static Plot plot(Curve... curves) {
    return new Plot(
        "here",
        "Level <loud>",
        "What it <shows>",
        Axis.ofFrequency("Frequency, Hz", 20, 20_000),
        Axis.around("Level, dB", FIGURES, 60, 100),
        List.of(curves),
        null,
        new TableColumns(
            List.of(new Axis.Tick(20, "20"), new Axis.Tick(1000, "1000")), PlotTest::bare));
  }

  @Test
  void frequenciesStandAtPreferredValuesAndEqualRatiosAreEquallyLong() {
    Axis axis = Axis.ofFrequency("f", 20, 20_000);
    assertEquals(
        List.of("20", "50", "100", "200", "500", "1 k", "2 k", "5 k", "10 k", "20 k"),
        axis.ticks().stream().map(Axis.Tick::text).filter(text -> !text.isEmpty()).toList());
    assertEquals(0, axis.at(20));
    assertEquals(1, axis.at(20_000), 1e-12);
    assertEquals(axis.at(200) - axis.at(20), axis.at(2000) - axis.at(200), 1e-12);
  }

  @Test
  void aLinearAxisHoldsItsValuesInFewWholeSteps() {
    double[][] ranges = {
      {0, 1}, {60.3, 118.7}, {-10, 40}, {0, 0.0031}, {-0.2, 0.2}, {5, 5}, {0, 0}, {997, 1003}
    };
    for (double[] range : ranges) {
      Axis axis = Axis.around("y", FIGURES, range[0], range[1]);
      String all = Arrays.toString(range) + axis;
      assertTrue(axis.from() <= range[0] && axis.to() >= range[1], all);
      assertTrue(axis.ticks().size() >= 2 && axis.ticks().size() <= 9, all);
      assertEquals(axis.from(), axis.ticks().get(0).value(), 1e-12, all);
      Set<String> texts = new HashSet<>();
      axis.ticks().forEach(tick -> assertTrue(texts.add(tick.text()), all));
    }
    assertEquals("−10", Axis.around("y", FIGURES, -10, 40).ticks().get(0).text());
    assertThrows(IllegalArgumentException.class, () -> Axis.ofFrequency("f", 0, 100));
  }

  @Test
  void everyCurveHasItsNameAndADashOfItsOwn() throws Exception {
    Curve[] curves = new Curve[8];
    for (int i = 0; i < curves.length; i++) {
      curves[i] = Curve.level("curve " + i, Curve.Kind.FOUND, 20, 20_000, 70 + i);
    }
    NodeList paths = parsed(plot(curves).svg()).getElementsByTagName("path");
    Set<String> dashes = new HashSet<>();
    Set<String> titles = new HashSet<>();
    for (int i = 0; i < paths.getLength(); i++) {
      if (paths.item(i).hasChildNodes()) {
        dashes.add(paths.item(i).getAttributes().getNamedItem("stroke-dasharray").getNodeValue());
        titles.add(paths.item(i).getTextContent());
      }
    }
    assertEquals(8, dashes.size());
    assertEquals(8, titles.size());
  }

  @Test
  void aValueLiesWhereItsAxesSay() throws Exception {
    // From left to right 64 to 704, from bottom to top 316 to 16: 200 Hz is a third of the way.
    Curve curve = Curve.of("one", Curve.Kind.FOUND, List.of(200.0, 20_000.0), List.of(60.0, 100.0));
    NodeList paths = parsed(plot(curve).svg()).getElementsByTagName("path");
    String found = "";
    for (int i = 0; i < paths.getLength(); i++) {
      if (paths.item(i).hasChildNodes()) {
        found = paths.item(i).getAttributes().getNamedItem("d").getNodeValue();
      }
    }
    assertEquals("M277.3 316.0L704.0 16.0", found);
  }

  @Test
  void hostileNamesAreTextAndWhatIsNotFiniteInterruptsTheCurve() throws Exception {
    String hostile = "<script>alert(1)</script> \"&'\u202e" + "x".repeat(2000) + "\uD83D\uDE00";
    Curve curve =
        Curve.of(
            hostile,
            Curve.Kind.FOUND,
            List.of(20.0, 50.0, 100.0, 200.0),
            Arrays.asList(70.0, null, 80.0, 90.0));
    String svg = plot(curve).svg();
    Document document = parsed(svg);
    assertEquals(0, document.getElementsByTagName("script").getLength());
    assertFalse(svg.contains("NaN"));
    assertTrue(svg.contains("M64.0 241.0M"), svg);
    assertTrue(document.getDocumentElement().getTextContent().contains("alert(1)"));
  }

  @Test
  void severalPlotsAreOneDrawing() throws Exception {
    Curve curve = Curve.level("one", Curve.Kind.LIMIT, 20, 20_000, 80);
    Document document = parsed(PlotSheet.svg(List.of(plot(curve), plot(curve))));
    assertEquals(5, document.getElementsByTagName("svg").getLength());
  }

  @Test
  void aDrawingHasATitleAndADescriptionAndIdsOfItsOwnAtEachSize() throws Exception {
    Plot plot = plot(Curve.level("one", Curve.Kind.FOUND, 20, 20_000, 80));
    Set<String> ids = new HashSet<>();
    for (Drawing.Size size : Drawing.Size.values()) {
      Document document = parsed(plot.svg(size));
      Element svg = document.getDocumentElement();
      assertEquals("img", svg.getAttribute("role"));
      NodeList all = document.getElementsByTagName("*");
      Set<String> here = new HashSet<>();
      for (int i = 0; i < all.getLength(); i++) {
        String id = ((Element) all.item(i)).getAttribute("id");
        here.add(id);
        assertTrue(id.isEmpty() || ids.add(id), id);
      }
      assertTrue(here.contains(svg.getAttribute("aria-labelledby")));
      assertTrue(here.contains(svg.getAttribute("aria-describedby")));
      assertEquals(
          "What it <shows>", document.getElementsByTagName("desc").item(0).getTextContent());
    }
  }

  @Test
  void theTableReadsTheNearestPlaceAndInterpolatesNothing() {
    Curve found =
        Curve.of(
            "one", Curve.Kind.FOUND, List.of(20.0, 900.0, 1200.0), Arrays.asList(null, 70.0, 90.0));
    FigureTable table = plot(found, Curve.level("most", Curve.Kind.LIMIT, 20, 20_000, 95)).table();
    assertEquals(List.of("20", "1000"), table.columns());
    assertEquals(List.of("one"), table.rows().stream().map(FigureTable.Row::name).toList());
    assertEquals(
        List.of("–", "70.0"),
        table.rows().get(0).figures().stream().map(WrittenFigure::text).toList());
    assertEquals("Level, dB", table.caption());
  }

  @Test
  void curvesThatLieOnEachOtherAreDrawnOnceAndReadEach() throws Exception {
    Plot plot =
        plot(
            Curve.level("left", Curve.Kind.FOUND, 20, 20_000, 80),
            Curve.level("right", Curve.Kind.FOUND, 20, 20_000, 80.05),
            Curve.level("bass", Curve.Kind.FOUND, 20, 20_000, 81),
            Curve.level("most", Curve.Kind.LIMIT, 20, 20_000, 80));
    NodeList paths = parsed(plot.svg()).getElementsByTagName("path");
    List<String> titles = new ArrayList<>();
    for (int i = 0; i < paths.getLength(); i++) {
      if (paths.item(i).hasChildNodes()) {
        titles.add(paths.item(i).getTextContent());
      }
    }
    assertEquals(List.of("left, right", "bass", "most"), titles);
    assertEquals(
        List.of("left", "right", "bass"),
        plot.table().rows().stream().map(FigureTable.Row::name).toList());
  }

  @Test
  void whatHoldsChangesHalfWayBetweenTwoPlaces() throws Exception {
    Strips.Mark heat = new Strips.Mark("H", "heat");
    Strips.Mark travel = new Strips.Mark("M", "movement");
    Strips.Strip strip =
        new Strips.Strip(
            "sub", List.of(20.0, 100.0, 400.0, 20_000.0), List.of(travel, travel, heat, heat));
    Plot bare = plot(Curve.level("one", Curve.Kind.FOUND, 20, 20_000, 80));
    Plot plot =
        new Plot(
            bare.id(),
            bare.title(),
            bare.description(),
            bare.x(),
            bare.y(),
            bare.curves(),
            new Strips("What ends it", List.of(heat, travel), List.of(strip)),
            bare.readings());
    // The axis is 640 long over three decades from 64 on; 200 Hz is the middle of 100 and 400 Hz.
    String svg = plot.svg();
    assertTrue(svg.contains("<rect x=\"64.0\" y=\"430.0\" width=\"213.3\" height=\"16\""), svg);
    assertTrue(svg.contains("<rect x=\"277.3\" y=\"430.0\" width=\"426.7\" height=\"16\""), svg);
    FigureTable table = plot.table();
    assertEquals("Level, dB; H: heat, M: movement", table.caption());
    assertEquals(
        List.of("M", "H"),
        table.rows().get(1).figures().stream().map(WrittenFigure::text).toList());
    assertEquals(svg.lines().filter(line -> line.contains(">M<")).count(), 2, svg);
  }
}
