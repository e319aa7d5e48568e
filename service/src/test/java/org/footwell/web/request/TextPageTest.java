package org.footwell.web.request;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.footwell.acoustic.filters.CrossoverFilters;
import org.footwell.acoustic.filters.CrossoverFiltersRequest;
import org.footwell.acoustic.filters.CrossoverFiltersResult;
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
            Rendering.render(endpoint, answered, Format.TEXT, Reader.ANYONE),
            StandardCharsets.UTF_8);
    for (CrossoverFiltersResult.DesignedSection section : answered.answer().result().sections()) {
      Biquad exact = section.coefficients();
      String whole =
          exact.b0()
              + ", "
              + exact.b1()
              + ", "
              + exact.b2()
              + ", "
              + exact.a1()
              + ", "
              + exact.a2();
      assertTrue(text.contains(whole), text);
      assertTrue(text.contains(section.rounded().a1() + ", " + section.rounded().a2()), text);
      assertTrue(text.contains("  " + Texts.forPeople(section.poleRadius()) + "  "), text);
    }
  }

  @Test
  void aListOfOneIsShownAndALongerOneCounted() throws JsonProcessingException {
    String page =
        TextPage.of(
            Json.MAPPER.readTree(
                """
                {"verdict": "ok", "findings": [], "safety": [], "result": {"channels": [
                  {"id": "centre", "filters": [{"kind": "peak", "frequency_hz": 1250.0}]},
                  {"id": "rear", "filters": [{"kind": "peak"}, {"kind": "notch"}]},
                  {"id": "bass", "filters": []}]}}
                """));
    assertEquals(
        """
        verdict: ok

        channels
          id      filters
          centre  peak, 1250
          rear    2 entries
          bass
        """,
        page);
  }
}
