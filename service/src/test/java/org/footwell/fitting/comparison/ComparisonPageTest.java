package org.footwell.fitting.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import org.footwell.fitting.comparison.sides.ComparedPosition.MountedAt;
import org.junit.jupiter.api.Test;

class ComparisonPageTest {

  private static String page(ComparisonDraft draft) {
    return new String(ComparisonPage.draw(draft.answer()), StandardCharsets.UTF_8);
  }

  private static void assertRow(String page, String heading, String... cells) {
    StringBuilder row = new StringBuilder("<tr><th scope=\"row\">" + heading + "</th>");
    for (String cell : cells) {
      row.append("<td>").append(cell).append("</td>");
    }
    assertTrue(page.contains(row.append("</tr>")), () -> row + " is not in\n" + page);
  }

  @Test
  void bothPartsStandBesideEachOtherRoundedForPeople() {
    ComparisonDraft draft =
        ComparisonDraft.of(new PositionDraft()).with("amplifier", MountedAt.BOOT, 3100.0, "249.5");
    draft.comparison.currency("EUR");
    String page = page(draft);
    assertRow(page, "Largest clean level", "93.1 dB", "101.4 dB", "+8.3 dB");
    String held = "the travel of its cone at 80 Hz";
    assertRow(page, "held by", held, held, "");
    assertRow(page, "Lowest useful frequency at 90.0 dB", "75 Hz", "58 Hz", "0.37 octaves lower");
    assertRow(page, "Mass", "0.70 kg", "2.50 kg", "+1.80 kg");
    assertRow(page, "Price", "", "129.90 EUR", "");
    assertRow(page, "Price for each dB of largest clean level", "", "15.69 EUR", "");
    assertRow(page, "front, woofer: largest clean level", "96.1 dB", "104.4 dB", "+8.3 dB");
    assertRow(page, "amplifier (bolt to the structure)", "boot", "3.10 kg", "249.50 EUR");
    assertRow(page, "Price of all that comes in", "", "", "379.40 EUR");
    assertTrue(page.contains("In a crash a loose part becomes a projectile."));
  }

  @Test
  void whatIsNotKnownIsADashAndABoundIsCalledOne() {
    PositionDraft position = new PositionDraft();
    position.factory.xmaxMm(null);
    position.replacement.price(null);
    String page = page(ComparisonDraft.of(position));
    assertRow(page, "Air moved, one way", "–", "137 cm³", "–");
    assertRow(page, "Largest clean level", "101.0 dB", "101.4 dB", "at least +0.4 dB");
    assertRow(
        page, "front, woofer: largest clean level", "104.0 dB", "104.4 dB", "at least +0.4 dB");
    assertRow(page, "Price", "", "–", "");
    assertRow(page, "Verdict of the check", "", "note", "");
  }

  @Test
  void whereNothingWasItsColumnIsEmptyOfFigures() {
    PositionDraft position = new PositionDraft();
    position.factory = null;
    position.place.amplifierBefore(null);
    String page = page(ComparisonDraft.of(position));
    assertRow(page, "Largest clean level", "–", "101.4 dB", "–");
    assertRow(page, "Mass", "–", "2.50 kg", "+2.50 kg");
  }

  @Test
  void namesAreTextAndNothingElse() throws Exception {
    PositionDraft position = PositionDraft.named("<script>alert('1')</script> & \"doors\"");
    position.replacement.name("</td><img src=x>");
    String page = page(ComparisonDraft.of(position).with("<b>", MountedAt.BOOT, 1.0, "1"));
    assertFalse(page.contains("<script"));
    assertFalse(page.contains("<img"));
    assertFalse(page.contains("<b>"));
    assertTrue(page.contains("&lt;script&gt;alert(&#39;1&#39;)&lt;/script&gt; &amp; &quot;doors"));
    int tables = bodyAsXml(page);
    assertEquals(4, tables);
  }

  /** The body is well-formed; the number of its tables. */
  private static int bodyAsXml(String page) throws Exception {
    String body = page.substring(page.indexOf("<body>"), page.indexOf("</html>"));
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(body.getBytes(StandardCharsets.UTF_8)))
        .getElementsByTagName("table")
        .getLength();
  }

  @Test
  void whatWasFoundIsSaidInItsSentences() {
    ComparisonDraft draft = ComparisonDraft.of(new PositionDraft());
    draft
        .answer()
        .findings()
        .forEach(
            finding ->
                assertTrue(
                    page(draft).contains(PageFigures.escaped(finding.inFull())), finding.inFull()));
    assertFalse(draft.answer().findings().isEmpty());
  }

  @Test
  void moneyHasTwoDecimalsAtLeast() {
    assertEquals("5.00 EUR", PageFigures.money(new BigDecimal("5"), "EUR"));
    assertEquals("5.125", PageFigures.money(new BigDecimal("5.125"), null));
    assertEquals("–", PageFigures.money(null, "EUR"));
  }

  @Test
  void aFallHasAMinusAndNothingHasNoSign() {
    assertEquals("−3.1 dB", PageFigures.signed(-3.05, 1, "dB"));
    assertEquals("0.0 dB", PageFigures.signed(-0.04, 1, "dB"));
    assertEquals("0.25 octaves higher", PageFigures.octaves(-0.25));
  }
}
