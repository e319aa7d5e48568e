package org.footwell.vehicle.curves;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.footwell.Answers;
import org.footwell.calculation.Shown;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Reader;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.plot.Drawing;
import org.footwell.plot.Drawing.Size;
import org.footwell.sheet.FigureTable;
import org.footwell.sheet.FigureWriter;
import org.footwell.vehicle.ModelledPlans;
import org.footwell.vehicle.PlanReview;
import org.footwell.vehicle.PlanReviewResult;
import org.footwell.vehicle.PlanReviewResult.SetupLine;
import org.footwell.vehicle.ReplacementLine;
import org.footwell.vehicle.curves.PlanCurvesResult.ReplacementCurve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Plots of whole plans and the page of them. */
class CurvePlotsTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String HOSTILE = "<script>alert(1)</script>\"&\u202e\uD83D\uDE00";

  private static ObjectNode json(String name) throws IOException {
    return (ObjectNode)
        JSON.readTree(Files.readString(Path.of("../docs/examples/" + name + ".json")));
  }

  private static Shown<VehiclePlan, PlanCurvesResult> shown(JsonNode json) {
    VehiclePlan plan = ModelledPlans.plan(json);
    return new Shown<>(plan, Answers.of(new PlanCurves(), plan), Reader.ANYONE);
  }

  private static List<Drawing> drawings(Shown<VehiclePlan, PlanCurvesResult> shown) {
    return CurvePlots.of(shown.request(), shown.answer().result(), shown.reader());
  }

  private static Document parsed(String markup) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(markup.getBytes(StandardCharsets.UTF_8)));
  }

  private static FigureTable table(List<Drawing> drawings, String id) {
    return drawings.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow().table();
  }

  @ParameterizedTest
  @ValueSource(strings = {"camper-van", "factory-estate", "low-budget-hatchback"})
  void everyDrawingStandsWithinItsFrameAtEachSize(String name) throws Exception {
    for (Drawing drawing : drawings(shown(json(name)))) {
      for (Size size : Size.values()) {
        Document svg = parsed(drawing.svg(size));
        String[] box = svg.getDocumentElement().getAttribute("viewBox").split(" ", -1);
        NodeList texts = svg.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
          within((Element) texts.item(i), Double.parseDouble(box[2]), Double.parseDouble(box[3]));
        }
      }
    }
  }

  /** By half of the height of letters for the width of each, as fonts of the web have it at least. */
  private static void within(Element text, double width, double height) {
    if (text.hasAttribute("transform")) {
      return;
    }
    double x = Double.parseDouble(text.getAttribute("x"));
    double y = Double.parseDouble(text.getAttribute("y"));
    double wide = 6.0 * text.getTextContent().length();
    double start =
        switch (text.getAttribute("text-anchor")) {
          case "middle" -> x - wide / 2;
          case "end" -> x - wide;
          default -> x;
        };
    String said = text.getTextContent() + " at " + x + " " + y + " of " + width + " " + height;
    assertTrue(start >= 0 && start + wide <= width, said);
    assertTrue(y >= 10 && y <= height, said);
  }

  @ParameterizedTest
  @ValueSource(strings = {"camper-van", "factory-estate", "low-budget-hatchback"})
  void aPageHasEveryIdOnceAndPrints(String name) throws Exception {
    Shown<VehiclePlan, PlanCurvesResult> shown = shown(json(name));
    String page = new String(CurvesPage.sheet(shown).html(), StandardCharsets.UTF_8);
    Set<String> ids = new HashSet<>();
    for (Matcher m = Pattern.compile(" id=\"([^\"]*)\"").matcher(page); m.find(); ) {
      assertTrue(ids.add(m.group(1)), m.group(1));
    }
    assertTrue(ids.contains("headroom-title") && ids.contains("headroom-narrow-desc"));
    byte[] pdf = CurvesPage.sheet(shown).pdf();
    assertEquals("%PDF", new String(pdf, 0, 4, StandardCharsets.US_ASCII));
    assertTrue(Arrays.equals(pdf, CurvesPage.sheet(shown).pdf()));
  }

  @Test
  void hostileNamesShowAsText() throws Exception {
    ObjectNode plan = json("camper-van");
    plan.withObject("/vehicle").put("name", HOSTILE);
    for (JsonNode seat : plan.get("seats")) {
      ((ObjectNode) seat).put("name", HOSTILE + seat.get("name").asText());
    }
    for (String parts : List.of("factory_parts", "new_parts")) {
      for (JsonNode part : plan.get(parts)) {
        ((ObjectNode) part).withObject("/driver").put("name", HOSTILE + "x".repeat(50));
      }
    }
    Shown<VehiclePlan, PlanCurvesResult> shown = shown(plan);
    for (Drawing drawing : drawings(shown)) {
      for (Size size : Size.values()) {
        assertEquals(0, parsed(drawing.svg(size)).getElementsByTagName("script").getLength());
      }
    }
    String page = new String(CurvesPage.sheet(shown).html(), StandardCharsets.UTF_8);
    assertFalse(page.contains("<script"));
    assertTrue(page.contains("&lt;script&gt;alert(1)"));
    assertTrue(CurvesPage.sheet(shown).pdf().length > 0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"camper-van", "factory-estate", "low-budget-hatchback"})
  void waysAndSupplyAreThoseOfTheReview(String name) throws Exception {
    Shown<VehiclePlan, PlanCurvesResult> shown = shown(json(name));
    PlanReviewResult review = Answers.of(new PlanReview(), shown.request()).result();
    PlanCurvesResult curves = shown.answer().result();
    assertEquals(review.supply(), curves.supply());
    for (PlanCurvesResult.Path path : curves.paths()) {
      SetupLine line =
          review.setupSheet().stream()
              .filter(one -> one.id().equals(path.channel()))
              .findFirst()
              .orElseThrow();
      Double set = line.set() == null ? null : line.set().delayMs();
      assertEquals(set == null ? line.delayMs() : set, path.delayMs(), 1e-12);
      assertEquals(path.distanceM() / 343.2 * 1000, path.flightMs(), 0.001);
      assertEquals(path.flightMs() + path.delayMs(), path.arrivalMs(), 1e-12);
    }
    assertEquals(shown.request().drivers().size(), curves.paths().size());
  }

  @Test
  void farAboveBothResonancesTheDifferenceIsThatOfTheReview() throws Exception {
    for (ObjectNode plan : List.of(json("camper-van"), ModelledPlans.json("passive-two-way"))) {
      Shown<VehiclePlan, PlanCurvesResult> shown = shown(plan);
      List<ReplacementLine> lines =
          Answers.of(new PlanReview(), shown.request()).result().replacements();
      List<ReplacementCurve> curves = shown.answer().result().replacements();
      assertEquals(lines.size(), curves.size());
      for (int i = 0; i < lines.size(); i++) {
        ReplacementCurve curve = curves.get(i);
        int last = curve.afterDbSpl().size() - 1;
        double louder = curve.afterDbSpl().get(last) - curve.beforeDbSpl().get(last);
        assertEquals(lines.get(i).levelChangeDb(), louder, 0.02, curve.driver());
      }
    }
  }

  @Test
  void whereAFactoryPartStatesNoSensitivityThereIsNoBefore() throws Exception {
    assertNull(shown(json("factory-estate")).answer().result().replacements());
  }

  @Test
  void placesThatChangeAlikeAreOnePlot() throws Exception {
    List<String> titles =
        drawings(shown(json("camper-van"))).stream()
            .filter(one -> one.id().startsWith("before-after"))
            .map(Drawing::title)
            .toList();
    assertEquals(
        List.of(
            "Before against after: front left woofer, front right woofer",
            "Before against after: rear left coaxial, rear right coaxial"),
        titles);
  }

  @Test
  void tablesHaveTheFiguresOfTheAnswer() throws Exception {
    Shown<VehiclePlan, PlanCurvesResult> shown = shown(json("camper-van"));
    PlanCurvesResult curves = shown.answer().result();
    List<Drawing> drawings = drawings(shown);
    // Every octave from 31.5 Hz on: places 12, 27, … of the answer, five in each third octave.
    FigureTable seats = table(drawings, "seats");
    FigureTable headroom = table(drawings, "headroom");
    FigureWriter figures = new FigureWriter(Reader.ANYONE);
    for (int o = 0; o < 10; o++) {
      int k = 12 + 15 * o;
      assertEquals(
          31.623 * Math.pow(10, 0.3 * o), curves.frequenciesHz().get(k), 0.001 * Math.pow(2, o));
      for (int s = 0; s < curves.seats().size(); s++) {
        Double level = curves.seats().get(s).levelDbSpl().get(k);
        assertEquals(level, seats.rows().get(s).figures().get(o).value());
        assertEquals(
            figures.bare(Measure.DB_SPL, level), seats.rows().get(s).figures().get(o).text());
      }
      assertEquals(
          curves.channels().get(0).headroomDb().get(k),
          headroom.rows().get(0).figures().get(o).value());
    }
    assertEquals("31.5", seats.columns().get(0));
    assertEquals("16,000", seats.columns().get(9));
  }

  @Test
  void theSupplyPlotSaysWhereAnAmplifierSwitchesOffAndWhereNothingHolds() throws Exception {
    FigureTable estate = table(drawings(shown(json("factory-estate"))), "supply");
    assertEquals(
        List.of("with the programme", "with a full sine", "switches off below"), estate.columns());
    assertEquals("9.5", estate.rows().get(1).figures().get(2).text());
    assertEquals("–", estate.rows().get(0).figures().get(2).text());
    assertEquals(2, table(drawings(shown(json("camper-van"))), "supply").columns().size());
    ObjectNode plan = json("camper-van");
    plan.withObject("/supply/battery").put("internal_ohm", 0.9);
    FigureTable weak = table(drawings(shown(plan)), "supply");
    assertTrue(
        weak.rows().stream().anyMatch(row -> row.name().endsWith("no voltage holds")),
        weak.rows().toString());
  }
}
