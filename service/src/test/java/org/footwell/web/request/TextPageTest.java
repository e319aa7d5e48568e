package org.footwell.web.request;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.acoustic.filters.CrossoverFilters;
import org.footwell.acoustic.filters.CrossoverFiltersRequest;
import org.footwell.acoustic.filters.CrossoverFiltersResult;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Texts;
import org.footwell.signal.Biquad;
import org.footwell.vehicle.repair.PlanRepair;
import org.junit.jupiter.api.Test;

class TextPageTest {

  private static final Reader GERMAN = Reader.in("de").orElseThrow();

  @Test
  void coefficientsAreWrittenWithAllTheirDigitsAndOtherNumbersRounded() {
    CrossoverFilters filters = new CrossoverFilters();
    Endpoint<CrossoverFiltersRequest, CrossoverFiltersResult> endpoint =
        new Endpoint<>(filters, new Engine(), Duration.ofSeconds(10));
    Answered<CrossoverFiltersRequest, CrossoverFiltersResult> answered =
        endpoint.answer(Rendering.utf8(filters.card().example()), false, Reader.ANYONE);
    String text =
        new String(
                Rendering.render(endpoint, answered, Format.TEXT, Digits.ALL, Reader.ANYONE),
                StandardCharsets.UTF_8)
            .replaceAll("\\s+", " ");
    for (CrossoverFiltersResult.DesignedSection section : answered.answer().result().sections()) {
      Biquad exact = section.coefficients();
      String whole =
          exact.b0() + " " + exact.b1() + " " + exact.b2() + " " + exact.a1() + " " + exact.a2();
      assertTrue(text.contains(whole), text);
      assertTrue(text.contains(section.rounded().a1() + " " + section.rounded().a2()), text);
      assertTrue(text.contains(Texts.forPeople(section.poleRadius())), text);
    }
  }

  @Test
  void figuresAreRoundedByTheirUnitsAndShownWithThem() throws JsonProcessingException {
    assertEquals(
        """
        verdict: warning

        findings
          warning: front: It dips. Wire it otherwise.

          loss      0.0 dB
          exposure  1.5 minutes
          mass      20 kg
          main      yes

        channels
          id      level, dB SPL  filters
          centre  100.6          peak 1250 Hz
          rear    −3.0           peak; notch
        """,
        page(
            """
            {"verdict": "warning", "safety": [], "findings": [{"level": "warning", "subject": "front",
              "text": "It dips.", "advice": "Wire it otherwise."}],
             "result": {"loss_db": -0.04935, "exposure_h": 0.02546, "mass_kg": 20.0, "main": true,
              "channels": [
               {"id": "centre", "level_db_spl": 100.56, "filters": [{"kind": "peak", "frequency_hz": 1250.0}]},
               {"id": "rear", "level_db_spl": -3.0, "filters": [{"kind": "peak"}, {"kind": "notch"}]}]}}
            """));
  }

  @Test
  void aTableThatIsTooWideStandsEntryByEntry() throws JsonProcessingException {
    StringBuilder fields = new StringBuilder("\"id\": \"front\"");
    for (int i = 0; i < 12; i++) {
      fields.append(", \"a_long_name_").append(i).append("_hz\": ").append(1000.0 + i);
    }
    String page =
        page(
            "{\"verdict\": \"ok\", \"safety\": [], \"findings\": [], \"result\": {\"channels\": [{"
                + fields
                + "}]}}");
    assertTrue(page.contains("  front\n    a long name 0 1000 Hz, a long name 1 1001 Hz"), page);
    page.lines().forEach(line -> assertTrue(line.length() <= 100, line));
  }

  @Test
  void aGermanReadsNamesAndNumbersInGerman() throws JsonProcessingException {
    assertEquals(
        """
        Urteil: Warnung

        Befunde
          Warnung: vorn: Ein Einbruch.

          Verlust               0,0 dB
          Erlaubte Hördauer     1,5 Minuten
          Tiefer um             0,4 Oktaven
          Gleichmäßig verteilt  ja
          Polradius             0,98
          Bänder                9 Werte
          fremdes wort          −2

        Ersatz
          Kennung  Pegel, dB SPL  Tiefer um, Oktaven
          centre   100,6          0,4

        Größter sauberer Pegel: Begrenzer Spitze
          Spannung  1,5 V

        Sicherheit
          - Vorsicht.
        """,
        page(
            """
            {"verdict": "Warnung", "safety": ["Vorsicht."],
             "findings": [{"level": "Warnung", "subject": "vorn", "text": "Ein Einbruch."}],
             "result": {"loss_db": -0.04935, "exposure_allowed_h": 0.025, "lower_reach_octaves": 0.41,
              "even_sharing": true, "pole_radius": 0.98,
              "bands_db": [1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0], "fremdes_wort": -2,
              "replacements": [{"id": "centre", "level_db_spl": 100.56, "lower_reach_octaves": 0.4}],
              "largest": {"limiter_peak_v": {"voltage_v": 1.5}}}}
            """,
            GERMAN));
  }

  /** Of every example no line is wider than the page, and both languages have the same figures. */
  @Test
  void everyExampleIsNarrowAndHasTheSameFiguresInBothLanguages() {
    int figures = 0;
    for (Calculation<?, ?> calculation : Calculations.all()) {
      String id = calculation.card().id();
      List<String> pages = pages(calculation);
      pages.forEach(page -> assertNarrow(id, page));
      assertTrue(pages.get(1).startsWith("Urteil: "), id);
      List<String> english = figures(pages.get(0));
      assertEquals(english, figures(pages.get(1)), id);
      figures += english.size();
      if (id.equals("plan-review")) {
        String german = inOneLine(pages.get(1));
        assertTrue(german.contains("Gain begrenzt durch Vollaussteuerung der Quelle"), german);
        assertTrue(german.contains(" Preis 1.600,00 "), german);
        assertTrue(inOneLine(pages.get(0)).contains(" price 1,600.00 "), pages.get(0));
      }
    }
    assertTrue(figures > 200, "figures: " + figures);
  }

  /** A currency that an answer names anywhere stands behind each of its single sums. */
  @Test
  void aSumHasItsCurrency() throws JsonProcessingException {
    String priced =
        """
        {"verdict": "ok", "safety": [], "findings": [],
         "result": {"price": 1600.00, "quote": {"currency": "EUR", "total": 2990.47,
           "items": [{"name": "cable", "amount": 12.50}]}}}
        """;
    JsonNode answer =
        Trees.MAPPER.reader(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).readTree(priced);
    String page = TextPage.of(answer, Reader.ANYONE, new Labels(Reader.ANYONE.language()));
    assertTrue(inOneLine(page).contains(" price 1,600.00 EUR "), page);
    assertTrue(inOneLine(page).contains(" total 2,990.47 EUR "), page);
    assertTrue(inOneLine(page).contains(" cable 12.50"), page);
    assertFalse(page.contains("12.50 EUR"), "a column says it once, above");
  }

  /** One name of the contract, of the left of a pair and of what is left over, has a label for each. */
  @Test
  void whatMeansTwoThingsIsCalledTwoThings() throws JsonProcessingException {
    String pair =
        """
        {"verdict": "ok", "safety": [], "findings": [],
         "result": {"pairs": [{"left": "fl", "right": "fr"}]}}
        """;
    assertTrue(page(pair).contains("  left  right\n"), page(pair));
    assertTrue(page(pair, GERMAN).contains("  Links  Rechts\n"), page(pair, GERMAN));
    List<String> repairs = pages(new PlanRepair());
    assertTrue(inOneLine(repairs.get(0)).contains(", left over warning "), repairs.get(0));
    assertTrue(inOneLine(repairs.get(1)).contains(", Übrig Warnung "), repairs.get(1));
  }

  private static String inOneLine(String page) {
    return page.replaceAll("\\s+", " ");
  }

  private static void assertNarrow(String id, String page) {
    page.lines()
        .filter(line -> line.length() > 100)
        .forEach(
            line ->
                assertTrue(
                    Arrays.stream(line.strip().split(" ")).anyMatch(word -> word.length() > 60),
                    () -> id + ": " + line));
  }

  /** The figures of the first group, in the order they stand; how lists are laid out depends on the words. */
  private static List<String> figures(String page) {
    String result =
        page.substring(page.indexOf('\n'))
            .replaceAll("(?s)\\n(findings|Befunde)\\n.*?\\n\\n", "\n")
            .replaceAll("(?s)\\n\\S.*", "")
            .replaceAll("Pegel bei (1 W|2,83 V)", "");
    return Pattern.compile("(?<![\\w/.,])\\d+(?:[.,]\\d+)*(?![\\w.,])")
        .matcher(result)
        .results()
        .map(figure -> figure.group().replace(',', '.'))
        .toList();
  }

  /** The example in English and in German; its findings stay in English. */
  private static <Q extends Record, R extends Record> List<String> pages(
      Calculation<Q, R> calculation) {
    Endpoint<Q, R> endpoint = new Endpoint<>(calculation, new Engine(), Duration.ofSeconds(30));
    Answered<Q, R> answered =
        endpoint.answer(Rendering.utf8(calculation.card().example()), true, Reader.ANYONE);
    return Stream.of(Reader.ANYONE, GERMAN)
        .map(reader -> Rendering.render(endpoint, answered, Format.TEXT, Digits.ALL, reader))
        .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
        .toList();
  }

  private static String page(String answer) throws JsonProcessingException {
    return page(answer, Reader.ANYONE);
  }

  private static String page(String answer, Reader reader) throws JsonProcessingException {
    return TextPage.of(Trees.MAPPER.readTree(answer), reader, new Labels(reader.language()));
  }
}
