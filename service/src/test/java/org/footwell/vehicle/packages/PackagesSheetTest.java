package org.footwell.vehicle.packages;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Shown;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.WrittenMoney;
import org.footwell.sheet.HostileNames;
import org.footwell.sheet.Papers;
import org.footwell.sheet.SheetFigures;
import org.footwell.vehicle.sheets.PlanSheets;
import org.footwell.web.request.Trees;
import org.junit.jupiter.api.Test;

/** The sheet of packages to choose from, on a screen and on paper. */
class PackagesSheetTest {

  private static ObjectNode demo() throws Exception {
    return ((ObjectNode) Trees.MAPPER.readTree(DemoOffer.request())).put("list_count", 3);
  }

  private static Shown<PackageOptionsRequest, PackageOptionsResult> shown(JsonNode request) {
    PackageOptionsRequest asked = SmallJob.of(request.toString());
    return new Shown<>(asked, Answers.of(new PackageOptions(), asked), Reader.ANYONE);
  }

  private static byte[] drawn(
      String format, Shown<PackageOptionsRequest, PackageOptionsResult> shown) {
    return PlanSheets.OF_PACKAGES.stream()
        .filter(view -> view.format().equals(format))
        .findFirst()
        .orElseThrow()
        .draw()
        .apply(shown);
  }

  @Test
  void pageAndPaperHaveTheFiguresOfTheAnswer() throws Exception {
    Shown<PackageOptionsRequest, PackageOptionsResult> shown = shown(demo());
    Answer<PackageOptionsResult> answer = shown.answer();
    int figures =
        SheetFigures.assertAllIn(
            SheetFigures.parsed(drawn("html", shown)),
            Locale.ENGLISH,
            figure -> true,
            Trees.MAPPER.valueToTree(answer));
    assertTrue(figures >= 12, "figures: " + figures);
    String paper = Papers.text("en", () -> drawn("pdf", shown));
    assertTrue(paper.contains("Halmera camper van"), paper);
    answer.result().packages().stream()
        .map(one -> WrittenMoney.of(one.review().quote().total(), Locale.ENGLISH) + " EUR")
        .forEach(price -> assertTrue(paper.contains(price), () -> price + " of " + paper));
  }

  @Test
  void namesAreTextAndNothingElse() throws Exception {
    for (String name : HostileNames.ALL) {
      ObjectNode request = demo().put("list_count", 1);
      ((ObjectNode) request.at("/plan/vehicle")).put("name", name);
      for (JsonNode driver : request.at("/offer/drivers")) {
        ((ObjectNode) driver.at("/part/driver")).put("name", name);
      }
      Shown<PackageOptionsRequest, PackageOptionsResult> shown = shown(request);
      HostileNames.assertOnlyText(name, SheetFigures.parsed(drawn("html", shown)));
      String paper = Papers.text("en", () -> drawn("pdf", shown));
      assertTrue(!name.contains("alert(1)") || paper.contains(name), paper);
    }
  }
}
