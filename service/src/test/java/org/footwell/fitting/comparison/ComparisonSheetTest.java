package org.footwell.fitting.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Shown;
import org.footwell.calculation.text.Reader;
import org.footwell.fitting.comparison.sides.ComparedPosition.MountedAt;
import org.footwell.sheet.HostileNames;
import org.footwell.sheet.Papers;
import org.footwell.sheet.SheetFigures;
import org.footwell.web.request.Trees;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.w3c.dom.Text;

class ComparisonSheetTest {

  private static final Reader GERMAN = Reader.in("de").orElseThrow();

  private static Answer<DriverComparisonResult> answer(ComparisonDraft draft, Reader reader) {
    return new Engine()
        .answer(new DriverComparison(), draft.request(), false, Duration.ofSeconds(10), reader);
  }

  private static Document page(ComparisonDraft draft, Reader reader) throws Exception {
    return SheetFigures.parsed(drawn("html", draft, reader));
  }

  private static byte[] drawn(String format, ComparisonDraft draft, Reader reader) {
    return new DriverComparison()
        .card().views().stream()
            .filter(view -> view.format().equals(format))
            .findFirst()
            .orElseThrow()
            .draw()
            .apply(new Shown<>(draft.request(), answer(draft, reader), reader));
  }

  private static Document page(ComparisonDraft draft) throws Exception {
    return page(draft, Reader.ANYONE);
  }

  private static void assertRow(Document page, String... cells) {
    List<String> rows = new ArrayList<>();
    for (Element row : elements(page, "tr")) {
      rows.add(
          String.join(
              " | ",
              IntStream.range(0, row.getChildNodes().getLength())
                  .mapToObj(i -> row.getChildNodes().item(i))
                  .filter(Element.class::isInstance)
                  .map(cell -> cell.getTextContent().strip().replace('\u00a0', ' '))
                  .toList()));
    }
    String wanted = String.join(" | ", cells);
    assertTrue(rows.contains(wanted), () -> wanted + " is not in\n" + String.join("\n", rows));
  }

  private static List<Element> elements(Document page, String name) {
    NodeList found = page.getElementsByTagName(name);
    return IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i)).toList();
  }

  private static ComparisonDraft doorsAndAmplifier() {
    ComparisonDraft draft =
        ComparisonDraft.of(new PositionDraft()).with("amplifier", MountedAt.BOOT, 3100.0, "249.5");
    draft.comparison.currency("EUR");
    return draft;
  }

  @Test
  void bothPartsStandBesideEachOtherRoundedForPeople() throws Exception {
    Document page = page(doorsAndAmplifier());
    assertRow(page, "Largest clean level", "93.1 dB SPL", "101.4 dB SPL", "+8.3 dB");
    String held = "the travel of its cone at 80 Hz";
    assertRow(page, "Held by", held, held, "");
    assertRow(
        page,
        "Lowest useful frequency at 90.0 dB SPL",
        "75 Hz",
        "58 Hz",
        "plays 0.4 octaves lower");
    assertRow(page, "Mass", "700 g", "2.5 kg", "+1.8 kg");
    assertRow(page, "Price", "", "129.90 EUR", "");
    assertRow(page, "Price for each dB of largest clean level", "", "15.69 EUR", "");
    assertRow(page, "front, woofer: largest clean level", "96.1 dB SPL", "104.4 dB SPL", "+8.3 dB");
    assertRow(page, "amplifier (bolt to the structure)", "boot", "3.1 kg", "249.50 EUR");
    assertRow(page, "Price of all that comes in", "379.40 EUR");
    String text = page.getDocumentElement().getTextContent();
    assertTrue(text.contains("In a crash a loose part becomes a projectile."), text);
  }

  @Test
  void aGermanReadsTheSameInGerman() throws Exception {
    Document page = page(doorsAndAmplifier(), GERMAN);
    assertEquals("de", page.getDocumentElement().getAttribute("lang"));
    assertRow(page, "Größter sauberer Pegel", "93,1 dB SPL", "101,4 dB SPL", "+8,3 dB");
    assertRow(page, "Begrenzt durch", "Membranhub bei 80 Hz", "Membranhub bei 80 Hz", "");
    assertRow(
        page,
        "Tiefste nutzbare Frequenz bei 90,0 dB SPL",
        "75 Hz",
        "58 Hz",
        "spielt 0,4 Oktaven tiefer");
    assertRow(
        page, "vorn, Tieftöner: größter sauberer Pegel", "96,1 dB SPL", "104,4 dB SPL", "+8,3 dB");
    assertRow(
        page,
        "amplifier (mit der Fahrzeugstruktur verschrauben)",
        "Kofferraum",
        "3,1 kg",
        "249,50 EUR");
    assertRow(page, "Urteil der Prüfung", "", "Hinweis", "");
  }

  /** By hand: 264, 274 and 10 over 2.54², 52.8 cm³ and 137.0 cm³ over 2.54³. */
  @Test
  void whoMeasuresInInchesReadsAreasAndVolumesInThem() throws Exception {
    Reader inches = Reader.ANYONE.shown(Reader.Units.INCH);
    Document page = page(doorsAndAmplifier(), inches);
    assertRow(page, "Cone area", "40.9 in²", "42.5 in²", "+1.55 in²");
    assertRow(page, "Air moved, one way", "3.2 in³", "8.4 in³", "+5.1 in³");
    assertRow(page, "Mass", "700 g", "2.5 kg", "+1.8 kg");
    String paper = Papers.text("en", () -> drawn("pdf", doorsAndAmplifier(), inches));
    assertTrue(paper.contains("Cone area 40.9 in² 42.5 in² +1.55 in²"), paper);
  }

  /** In both languages every figure is a number of the answer, rounded as its unit is. */
  @Test
  void everyFigureIsOneOfTheAnswer() throws Exception {
    PositionDraft bound = new PositionDraft();
    bound.factory.xmaxMm(null);
    for (ComparisonDraft draft : List.of(doorsAndAmplifier(), ComparisonDraft.of(bound))) {
      for (Reader reader : List.of(Reader.ANYONE, GERMAN)) {
        JsonNode answer = Trees.MAPPER.valueToTree(answer(draft, reader));
        int figures =
            SheetFigures.assertAllIn(
                page(draft, reader), reader.language(), figure -> true, answer);
        assertTrue(figures > 30, "figures: " + figures);
      }
    }
  }

  @Test
  void whatIsNotKnownIsADashAndABoundIsCalledOne() throws Exception {
    PositionDraft position = new PositionDraft();
    position.factory.xmaxMm(null);
    position.replacement.price(null);
    Document page = page(ComparisonDraft.of(position));
    assertRow(page, "Air moved, one way", "–", "137 cm³", "–");
    assertRow(page, "Largest clean level", "101.0 dB SPL", "101.4 dB SPL", "at least +0.4 dB");
    assertRow(
        page,
        "front, woofer: largest clean level",
        "104.0 dB SPL",
        "104.4 dB SPL",
        "at least +0.4 dB");
    assertRow(page, "Price", "", "–", "");
    assertRow(page, "Verdict of the check", "", "note", "");
  }

  @Test
  void whereNothingWasItsColumnIsEmptyOfFigures() throws Exception {
    PositionDraft position = new PositionDraft();
    position.factory = null;
    position.place.amplifierBefore(null);
    Document page = page(ComparisonDraft.of(position));
    assertRow(page, "Largest clean level", "–", "101.4 dB SPL", "–");
    assertRow(page, "Mass", "–", "2.5 kg", "+2.5 kg");
  }

  @Test
  void aPriceHasTheDigitsOfItsCurrencyAndMayHaveNone() throws Exception {
    ComparisonDraft draft = ComparisonDraft.of(new PositionDraft());
    assertRow(page(draft), "Price", "", "129.90", "");
    draft.comparison.currency("CHF");
    assertRow(page(draft), "Price", "", "129.90 CHF", "");
  }

  @Test
  void namesAreTextAndNothingElse() throws Exception {
    for (String name : HostileNames.ALL) {
      Document page = page(named(name));
      HostileNames.assertOnlyText(name, page);
      assertEquals(4, elements(page, "table").size(), name);
    }
  }

  private static ComparisonDraft named(String name) {
    PositionDraft position = PositionDraft.named(name);
    position.replacement.name(name);
    return ComparisonDraft.of(position).with(name, MountedAt.BOOT, 1.0, "1");
  }

  @Test
  void thePaperSaysWhatThePageSays() throws Exception {
    for (Reader reader : List.of(Reader.ANYONE, GERMAN)) {
      String paper =
          Papers.text(
              reader.language().toLanguageTag(), () -> drawn("pdf", doorsAndAmplifier(), reader));
      List<String> said = said(elements(page(doorsAndAmplifier(), reader), "main").get(0)).toList();
      said.forEach(one -> assertTrue(paper.contains(one), () -> one + " is not in\n" + paper));
      assertTrue(said.size() > 60, said::toString);
    }
  }

  private static Stream<String> said(Node node) {
    return node instanceof Text text
        ? Stream.of(Papers.spaced(text.getData())).filter(said -> !said.isEmpty())
        : IntStream.range(0, node.getChildNodes().getLength())
            .mapToObj(node.getChildNodes()::item)
            .flatMap(ComparisonSheetTest::said);
  }

  @Test
  void hostileNamesPrintAsText() throws Exception {
    for (String name : HostileNames.ALL) {
      String paper = Papers.text("en", () -> drawn("pdf", named(name), Reader.ANYONE));
      assertTrue(paper.contains("93.1 dB SPL 101.4 dB SPL"), paper);
      if (name.contains("alert(1)")) {
        assertTrue(paper.contains(name), paper);
      }
    }
  }

  @Test
  void whatWasFoundIsSaidInItsSentences() throws Exception {
    ComparisonDraft draft = ComparisonDraft.of(new PositionDraft());
    for (Reader reader : List.of(Reader.ANYONE, GERMAN)) {
      String text = page(draft, reader).getDocumentElement().getTextContent();
      List<Finding> findings = answer(draft, reader).findings();
      findings.forEach(finding -> assertTrue(text.contains(finding.text()), finding.text()));
      assertFalse(findings.isEmpty());
    }
  }
}
