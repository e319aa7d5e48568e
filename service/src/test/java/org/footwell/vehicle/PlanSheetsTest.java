package org.footwell.vehicle;

import static org.footwell.sheet.SheetFigures.parsed;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.footwell.calculation.Answer;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.sheet.HostileNames;
import org.footwell.sheet.Papers;
import org.footwell.sheet.SheetFigures;
import org.footwell.web.request.Trees;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

class PlanSheetsTest {

  private static final String[] EXAMPLES = {
    "camper-van.json", "factory-estate.json", "low-budget-hatchback.json"
  };

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
              Trees.MAPPER.valueToTree(answer),
              Trees.MAPPER.valueToTree(plan));
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
    for (String name : HostileNames.ALL) {
      PlanDraft plan = renamed(name);
      HostileNames.assertOnlyText(name, parsed(Sheets.bytes(format, plan.read(), plan.review())));
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
    String text = Papers.text("en", () -> Sheets.bytes(format, plan, answer));
    assertTrue(text.contains("Halmera camper van"), text);
  }

  @Test
  void hostileNamesPrint() throws Exception {
    for (String name : HostileNames.ALL) {
      PlanDraft plan = renamed(name);
      String text = Papers.text("en", () -> Sheets.bytes("pdf", plan.read(), plan.review()));
      assertTrue(text.length() > 1000, text);
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

  /**
   * Worked by hand: 3.5 h of 78.125 are 273.4375, all else as above is 2240; 19 % of the sum is tax. Each is rounded to
   * the smallest unit of its currency, a half upward.
   */
  @ParameterizedTest
  @CsvSource({
    "JPY, 2513, 477, 2990",
    "EUR, 2513.44, 477.55, 2990.99",
    "KWD, 2513.438, 477.553, 2990.991"
  })
  void sumsHaveTheDecimalsOfTheirCurrency(
      String currency, BigDecimal net, BigDecimal tax, BigDecimal total) throws Exception {
    PlanDraft draft = PlanDraft.van();
    ((ObjectNode) draft.json().at("/quote")).put("currency", currency);
    ((ObjectNode) draft.json().at("/quote/labour/0")).put("hour_price", 78.125);
    QuoteTotals totals = draft.review().result().quote();
    assertEquals(List.of(net, tax, total), List.of(totals.net(), totals.tax(), totals.total()));
    String paper = Papers.text("en", () -> Sheets.bytes("pdf", draft.read(), draft.review()));
    for (BigDecimal sum : List.of(net, tax, total)) {
      String shown = sum.toString().replaceFirst("^(\\d)(\\d{3})", "$1,$2");
      assertTrue(paper.contains(" " + shown + " " + currency + " "), shown + " in " + paper);
    }
  }
}
