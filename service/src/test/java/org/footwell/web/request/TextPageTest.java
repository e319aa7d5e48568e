package org.footwell.web.request;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import org.footwell.Calculations;
import org.footwell.acoustic.filters.CrossoverFilters;
import org.footwell.acoustic.filters.CrossoverFiltersRequest;
import org.footwell.acoustic.filters.CrossoverFiltersResult;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Texts;
import org.footwell.signal.Biquad;
import org.junit.jupiter.api.Test;

class TextPageTest {

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

  /** Of every example no line is wider than the page, tables included. */
  @Test
  void noExampleIsWiderThanThePage() {
    for (Calculation<?, ?> calculation : Calculations.all()) {
      text(calculation)
          .lines()
          .filter(line -> line.length() > 100)
          .forEach(
              line ->
                  assertTrue(
                      Arrays.stream(line.strip().split(" ")).anyMatch(word -> word.length() > 60),
                      () -> calculation.card().id() + ": " + line));
    }
  }

  private static <Q extends Record, R extends Record> String text(Calculation<Q, R> calculation) {
    Endpoint<Q, R> endpoint = new Endpoint<>(calculation, new Engine(), Duration.ofSeconds(30));
    Answered<Q, R> answered =
        endpoint.answer(Rendering.utf8(calculation.card().example()), true, Reader.ANYONE);
    return new String(
        Rendering.render(endpoint, answered, Format.TEXT, Digits.ALL, Reader.ANYONE),
        StandardCharsets.UTF_8);
  }

  private static String page(String answer) throws JsonProcessingException {
    return TextPage.of(Json.MAPPER.readTree(answer));
  }
}
