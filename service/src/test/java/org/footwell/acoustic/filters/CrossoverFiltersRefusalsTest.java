package org.footwell.acoustic.filters;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Listening;
import org.footwell.acoustic.filters.FilterDraft.Output;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Filter.Kind;
import org.footwell.signal.SectionKind;
import org.junit.jupiter.api.Test;

class CrossoverFiltersRefusalsTest {

  private static FilterDraft woofer() {
    return new FilterDraft().with(new Output("woofer").low(Kind.BUTTERWORTH, 4, 3000));
  }

  @Test
  void everyFrequencyFromHalfTheRateOnIsRefusedAtItsField() {
    FilterDraft draft =
        new FilterDraft()
            .with(
                new Output("all").high(Kind.BUTTERWORTH, 2, 24000).low(Kind.BUTTERWORTH, 2, 30000))
            .with("all", SectionKind.PEAK, 25000, 1.0, 3.0);
    draft.flatToHz = 24000.0;
    draft.frequencies = new CurveFrequencies(null, null, 24000.0, List.of(1000.0, 24000.0));
    assertEquals(
        List.of(
            "/ways/0/high_pass/frequency_hz",
            "/ways/0/low_pass/frequency_hz",
            "/sections/0/frequency_hz",
            "/flat_to_hz",
            "/frequencies/list_hz/1",
            "/frequencies/to_hz"),
        draft.refusedAt());
  }

  @Test
  void ordersOutOfRangeAndOddLinkwitzRileyAreRefused() {
    FilterDraft nine = new FilterDraft().with(new Output("a").low(Kind.BUTTERWORTH, 9, 100));
    assertEquals(List.of("/ways/0/low_pass/order"), nine.refusedAt());
    FilterDraft none = new FilterDraft().with(new Output("a").high(Kind.BESSEL, 0, 100));
    assertEquals(List.of("/ways/0/high_pass/order"), none.refusedAt());
    FilterDraft odd = new FilterDraft().with(new Output("a").low(Kind.LINKWITZ_RILEY, 3, 100));
    assertEquals(List.of("linkwitz-riley-odd"), odd.refusals());
    assertEquals(List.of("/ways/0/low_pass/order"), odd.refusedAt());
  }

  @Test
  void sectionsMustNameAWayAndHaveWhatTheirKindHas() {
    FilterDraft draft =
        woofer()
            .with("wofer", SectionKind.NOTCH, 100, 2.0, null)
            .with("woofer", SectionKind.PEAK, 100, null, null)
            .with("woofer", SectionKind.ALL_PASS_1, 100, 2.0, 3.0)
            .with("woofer", SectionKind.LOW_SHELF_1, 100, null, null);
    assertEquals(
        List.of(
            "dangling-reference",
            "required",
            "required",
            "section-without-such",
            "section-without-such",
            "required"),
        draft.refusals());
  }

  @Test
  void aFixedWordNeedsItsBitsAndOneForTheSign() {
    assertEquals(
        List.of("/coefficient_format/word_bits", "/coefficient_format/fraction_bits"),
        woofer().fixed(null, null).refusedAt());
    assertEquals(List.of("fraction-longer-than-word"), woofer().fixed(24, 24).refusals());
  }

  @Test
  void waysAreNamedOnceAndPolarityIsOneOrMinusOne() {
    Output again = new Output("woofer").high(Kind.BUTTERWORTH, 2, 100);
    again.polarity = 0;
    assertEquals(List.of("/ways/1/id", "/ways/1/polarity"), woofer().with(again).refusedAt());
  }

  @Test
  void aWayBehindTheListenerAndAReversedBandAreRefused() {
    FilterDraft draft = woofer().with(new Output("rear").at(0, -1));
    draft.listening = new Listening(0.5, null, null);
    draft.flatFromHz = 500.0;
    draft.flatToHz = 400.0;
    assertEquals(List.of("/flat_to_hz", "/ways/1/behind_m"), draft.refusedAt());
  }

  @Test
  void aLowRateWithoutARangeIsAnsweredBelowHalfOfIt() {
    FilterDraft draft = woofer();
    draft.rateHz = 8000;
    assertEquals(3600, draft.request().frequencies().toHz());
    assertEquals(1, draft.result().ways().size());
  }
}
