package org.footwell.vehicle;

import static org.footwell.sheet.SheetFigures.parsed;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.footwell.calculation.Answer;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.sheet.SheetFigures;
import org.footwell.web.request.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

class PlanSheetsTest {

  private static final String[] EXAMPLES = {
    "camper-van.json", "factory-estate.json", "low-budget-hatchback.json"
  };

  private static final List<String> HOSTILE =
      List.of(
          "<script>alert(1)</script>",
          "\" onmouseover=\"alert(1)",
          "</title><img src=x onerror=alert(1)>",
          "&amp;lt; & ]]> <!-- -->",
          "\u202Eabc\u05D0\u05D1 \u0627\u0644",
          "\uD83D\uDD0A loud \uD800",
          "a".repeat(80));

  /** Every figure of both sheets is one of the answer or the plan, rounded as is said. */
  @ParameterizedTest
  @ValueSource(strings = {"html", "fitter.html"})
  void everyFigureIsOneOfTheAnswer(String format) throws Exception {
    for (String example : EXAMPLES) {
      PlanDraft draft = PlanDraft.ofFile("../docs/examples/" + example);
      VehiclePlan plan = draft.read();
      Answer<PlanReviewResult> answer = draft.review();
      Document page = parsed(Sheets.bytes(format, plan, answer));
      int figures =
          SheetFigures.assertAllIn(
              page,
              Locale.ENGLISH,
              figure -> !isBesideADrawing(figure), // those are held in CurvePlotsTest
              Json.MAPPER.valueToTree(answer),
              Json.MAPPER.valueToTree(plan));
      assertTrue(figures >= 5, example + ": " + figures);
    }
  }

  private static boolean isBesideADrawing(Element figure) {
    for (Node node = figure; node instanceof Element above; node = node.getParentNode()) {
      if (above.getTagName().equals("section")
          && above.getElementsByTagName("svg").getLength() > 0) {
        return true;
      }
    }
    return false;
  }

  @ParameterizedTest
  @ValueSource(strings = {"html", "fitter.html"})
  void namesAreTextAndNothingElse(String format) throws Exception {
    for (String name : HOSTILE) {
      PlanDraft plan = renamed(name);
      byte[] page = Sheets.bytes(format, plan.read(), plan.review());
      Document document = parsed(page);
      for (String tag : List.of("script", "img")) {
        assertEquals(0, document.getElementsByTagName(tag).getLength(), name);
      }
      NodeList all = document.getElementsByTagName("*");
      for (int i = 0; i < all.getLength(); i++) {
        assertFalse(((Element) all.item(i)).hasAttribute("onmouseover"), name);
      }
      String text = document.getDocumentElement().getTextContent();
      assertTrue(text.contains(name.replace('\uD800', '\uFFFD')), name);
    }
  }

  private static PlanDraft renamed(String name) {
    PlanDraft draft = PlanDraft.van();
    for (String place :
        List.of(
            "/vehicle", "/new_parts/0/driver", "/amplifiers/0", "/quote/shop", "/quote/labour/0")) {
      ((ObjectNode) draft.json().at(place)).put("name", name);
    }
    return draft;
  }

  @ParameterizedTest
  @ValueSource(strings = {"pdf", "fitter.pdf"})
  void theSamePlanIsTheSamePaper(String format) throws Exception {
    VehiclePlan plan = PlanDraft.van().read();
    Answer<PlanReviewResult> answer = PlanDraft.van().review();
    byte[] paper = Sheets.bytes(format, plan, answer);
    assertArrayEquals(paper, Sheets.bytes(format, plan, answer));
    try (PDDocument document = Loader.loadPDF(paper)) {
      assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked(), "tagged");
      assertEquals("en", document.getDocumentCatalog().getLanguage());
      String text = new PDFTextStripper().getText(document);
      assertTrue(text.contains("Halmera camper van"), text);
    }
  }

  @Test
  void hostileNamesPrint() throws Exception {
    for (String name : HOSTILE) {
      PlanDraft plan = renamed(name);
      try (PDDocument document = Loader.loadPDF(Sheets.bytes("pdf", plan.read(), plan.review()))) {
        assertTrue(document.getNumberOfPages() >= 1);
      }
    }
  }

  @Test
  void theSumIsExact() {
    QuoteTotals totals = PlanDraft.van().review().result().quote();
    // Worked by hand: parts and amplifiers 1600.00, labour 3.5 · 78 + 6 · 78 + 2 · 86 = 913.00.
    assertEquals(new BigDecimal("2513.00"), totals.net());
    assertEquals(new BigDecimal("477.47"), totals.tax());
    assertEquals(new BigDecimal("2990.47"), totals.total());
  }
}
