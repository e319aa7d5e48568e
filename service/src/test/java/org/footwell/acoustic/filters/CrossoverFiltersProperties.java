package org.footwell.acoustic.filters;

import static org.footwell.acoustic.filters.FilteredWays.high;
import static org.footwell.acoustic.filters.FilteredWays.low;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Listening;
import org.footwell.parts.Filter.Kind;

class CrossoverFiltersProperties {

  @Property(tries = 60)
  void linkwitzRileySumsFlatAtAnyCornerWithTheRightPolarity(
      @ForAll @IntRange(min = 1, max = 4) int half,
      @ForAll @DoubleRange(min = 30, max = 15000) double corner) {
    int polarity = half % 2 == 0 ? 1 : -1;
    CrossoverFiltersResult result =
        FilteredWays.pair(Kind.LINKWITZ_RILEY, 2 * half, corner, polarity).result();
    assertEquals(0, result.sum().spreadDb(), 1e-6);
  }

  @Property(tries = 40)
  void theBestDelayNeverSumsWorseAndInvertingTwiceIsNothing(
      @ForAll Kind kind,
      @ForAll @IntRange(min = 1, max = 4) int half,
      @ForAll @DoubleRange(min = 0, max = 0.4) double delay) {
    FilteredWays draft =
        new FilteredWays()
            .with(low("lower", kind, 2 * half, 1500))
            .with(high("upper", kind, 2 * half, 1500).delayMs(delay));
    FilteredWays turned =
        new FilteredWays()
            .with(low("lower", kind, 2 * half, 1500))
            .with(high("upper", kind, 2 * half, 1500).delayMs(delay).polarity(-1));
    CrossoverFiltersResult.Handover one = draft.result().handovers().get(0);
    CrossoverFiltersResult.Handover other = turned.result().handovers().get(0);
    assertTrue(one.bestSpreadDb() <= Math.min(one.spreadDb(), one.invertedSpreadDb()) + 0.11);
    assertEquals(one.spreadDb(), other.invertedSpreadDb(), 1e-9);
    assertEquals(one.invertedSpreadDb(), other.spreadDb(), 1e-9);
  }

  @Property(tries = 40)
  void aboveAndBelowAMiddleAreAlike(
      @ForAll @DoubleRange(min = 0.05, max = 0.5) double apart,
      @ForAll @DoubleRange(min = 0.1, max = 1) double height) {
    FilteredWays draft =
        new FilteredWays()
            .with(low("above", Kind.LINKWITZ_RILEY, 4, 1000).heightM(apart))
            .with(low("below", Kind.LINKWITZ_RILEY, 4, 1000).heightM(-apart));
    draft.asked.listening(new Listening(1.0, List.of(height, -height), null));
    CrossoverFiltersResult result = draft.result();
    assertEquals(result.heights().get(0).lossDb(), result.heights().get(1).lossDb(), 1e-6);
    assertEquals(result.heights().get(0).angleDeg(), -result.heights().get(1).angleDeg(), 1e-12);
  }

  @Property(tries = 40)
  void gainMovesTheWholeCurve(@ForAll @DoubleRange(min = -40, max = 20) double gain) {
    FilteredWays plain = new FilteredWays().with(low("one", Kind.BESSEL, 5, 700));
    FilteredWays moved = new FilteredWays().with(low("one", Kind.BESSEL, 5, 700).gainDb(gain));
    assertEquals(
        plain.result().ways().get(0).points().get(50).levelDb() + gain,
        moved.result().ways().get(0).points().get(50).levelDb(),
        1e-9);
  }
}
