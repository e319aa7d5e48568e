package org.footwell.acoustic.filters;

import static org.footwell.acoustic.filters.FilteredWays.filter;
import static org.footwell.acoustic.filters.FilteredWays.high;
import static org.footwell.acoustic.filters.FilteredWays.low;
import static org.footwell.acoustic.filters.FilteredWays.way;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Listening;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Filter.Kind;
import org.footwell.signal.SectionKind;
import org.junit.jupiter.api.Test;

class CrossoverFiltersRefusalsTest {

  private static FilteredWays woofer() {
    return new FilteredWays().with(low("woofer", Kind.BUTTERWORTH, 4, 3000));
  }

  @Test
  void everyFrequencyFromHalfTheRateOnIsRefusedAtItsField() {
    FilteredWays draft =
        new FilteredWays()
            .with(
                high("all", Kind.BUTTERWORTH, 2, 24000).lowPass(filter(Kind.BUTTERWORTH, 2, 30000)))
            .with("all", SectionKind.PEAK, 25000, 1.0, 3.0);
    draft
        .asked
        .flatToHz(24000.0)
        .frequencies(new CurveFrequencies(null, null, 24000.0, List.of(1000.0, 24000.0)));
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
    FilteredWays nine = new FilteredWays().with(low("a", Kind.BUTTERWORTH, 9, 100));
    assertEquals(List.of("/ways/0/low_pass/order"), nine.refusedAt());
    FilteredWays none = new FilteredWays().with(high("a", Kind.BESSEL, 0, 100));
    assertEquals(List.of("/ways/0/high_pass/order"), none.refusedAt());
    FilteredWays odd = new FilteredWays().with(low("a", Kind.LINKWITZ_RILEY, 3, 100));
    assertEquals(List.of("linkwitz-riley-odd"), odd.refusals());
    assertEquals(List.of("/ways/0/low_pass/order"), odd.refusedAt());
  }

  @Test
  void sectionsMustNameAWayAndHaveWhatTheirKindHas() {
    FilteredWays draft =
        woofer()
            .with("woofer", SectionKind.PEAK, 100, null, null)
            .with("woofer", SectionKind.ALL_PASS_1, 100, 2.0, 3.0)
            .with("woofer", SectionKind.LOW_SHELF_1, 100, null, null);
    assertEquals(
        List.of("required", "required", "section-without-such", "section-without-such", "required"),
        draft.refusals());
    FilteredWays misspelt = woofer().with("wofer", SectionKind.NOTCH, 100, 2.0, null);
    assertEquals(List.of("dangling-reference"), misspelt.refusals());
    assertEquals(List.of("/sections/0/channel"), misspelt.refusedAt());
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
    CrossoverFiltersRequestWayBuilder again = high("woofer", Kind.BUTTERWORTH, 2, 100).polarity(0);
    assertEquals(List.of("/ways/1/polarity", "/ways/1/id"), woofer().with(again).refusedAt());
  }

  @Test
  void aWayBehindTheListenerAndAReversedBandAreRefused() {
    FilteredWays draft = woofer().with(way("rear").heightM(0.0).behindM(-1.0));
    draft.asked.listening(new Listening(0.5, null, null)).flatFromHz(500.0).flatToHz(400.0);
    assertEquals(List.of("/flat_to_hz", "/ways/1/behind_m"), draft.refusedAt());
    draft.asked.flatFromHz(300.0);
    assertEquals(List.of("/ways/1/behind_m"), draft.refusedAt());
  }

  @Test
  void aLowRateWithoutARangeIsAnsweredBelowHalfOfIt() {
    FilteredWays draft = woofer();
    draft.asked.rateHz(8000.0);
    assertEquals(3600, draft.request().frequencies().toHz());
    assertEquals(1, draft.result().ways().size());
  }
}
