package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.Setup.filter;
import static org.footwell.acoustic.alignment.Setup.lr4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.footwell.parts.Filter.Kind;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Phasor;

@Tag("long")
class PhaseMatchProperties {

  /** A subwoofer with a subsonic filter, late by so much, under a matched upper channel. */
  private static DoubleFunction<Phasor> lower(double hz, int order, double ratio, double lateMs) {
    AnalogFilter subsonic = filter(Kind.BUTTERWORTH, order, ratio * hz).highPass();
    AnalogFilter low = lr4(hz).lowPass();
    return f -> low.at(f).times(subsonic.at(f)).times(Phasor.ofPolar(1, -0.36 * f * lateMs));
  }

  private static PhaseMatch match(DoubleFunction<Phasor> lower, double hz) {
    return PhaseMatch.of(lower, List.of(lr4(hz).highPass()::at), hz, true);
  }

  @Property(tries = 100)
  void noDelayOfTheWindowLosesLessAndNoNearerOneIsAsGood(
      @ForAll @DoubleRange(min = 30, max = 300) double hz,
      @ForAll @IntRange(min = 1, max = 4) int order,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double ratio,
      @ForAll @DoubleRange(min = -0.6, max = 0.6) double latePeriods) {
    double late = 1000 * latePeriods / hz;
    PhaseMatch.Setting found = match(lower(hz, order, ratio, late), hz).asGiven();
    assertTrue(Math.abs(found.delayMs()) <= 500 / hz);
    for (int i = -50; i <= 50; i++) {
      double tried = 500 / hz * i / 50;
      double loss = match(lower(hz, order, ratio, late + tried), hz).asGiven().flightLossDb();
      assertTrue(loss <= found.lossDb() + PhaseMatch.HARDLY_MORE_DB + 1e-6);
      if (Math.abs(tried) < Math.abs(found.delayMs()) - 1e-6) {
        assertTrue(loss <= found.lossDb() + 1e-6);
      }
    }
  }

  @Property(tries = 100)
  void theLossFoundIsThatOfTheDelayFound(
      @ForAll @DoubleRange(min = 30, max = 300) double hz,
      @ForAll @DoubleRange(min = -0.6, max = 0.6) double latePeriods) {
    double late = 1000 * latePeriods / hz;
    PhaseMatch.Setting found = match(lower(hz, 4, 0.4, late), hz).asGiven();
    PhaseMatch moved = match(lower(hz, 4, 0.4, late + found.delayMs()), hz);
    assertEquals(found.lossDb(), moved.asGiven().flightLossDb(), 1e-9);
  }

  @Property(tries = 100)
  void invertingTheLowerChannelSwapsThePolarities(
      @ForAll @DoubleRange(min = 30, max = 300) double hz,
      @ForAll @DoubleRange(min = -0.6, max = 0.6) double latePeriods) {
    DoubleFunction<Phasor> lower = lower(hz, 4, 0.4, 1000 * latePeriods / hz);
    PhaseMatch one = match(lower, hz);
    PhaseMatch other = match(f -> lower.apply(f).times(-1), hz);
    assertSame(one.asGiven(), other.inverted(), 1);
    assertSame(one.inverted(), other.asGiven(), 1);
  }

  @Property(tries = 100)
  void whatAllChannelsHaveInCommonChangesNothing(
      @ForAll @DoubleRange(min = 30, max = 300) double hz,
      @ForAll @DoubleRange(min = 0, max = 50) double lateMs,
      @ForAll @DoubleRange(min = 0.01, max = 100) double size) {
    DoubleFunction<Phasor> lower = lower(hz, 4, 0.4, 0.7);
    DoubleFunction<Phasor> upper = lr4(hz).highPass()::at;
    DoubleFunction<Phasor> common = f -> Phasor.ofPolar(size, -0.36 * f * lateMs);
    PhaseMatch together =
        PhaseMatch.of(
            f -> lower.apply(f).times(common.apply(f)),
            List.of(f -> upper.apply(f).times(common.apply(f))),
            hz,
            true);
    assertSame(match(lower, hz).asGiven(), together.asGiven(), 1);
  }

  @Property(tries = 100)
  void delaysScaleWithThePeriod(
      @ForAll @DoubleRange(min = 30, max = 100) double hz,
      @ForAll @DoubleRange(min = 1, max = 3) double factor,
      @ForAll @DoubleRange(min = -0.6, max = 0.6) double latePeriods) {
    PhaseMatch low = match(lower(hz, 3, 0.5, 1000 * latePeriods / hz), hz);
    PhaseMatch high =
        match(lower(factor * hz, 3, 0.5, 1000 * latePeriods / hz / factor), factor * hz);
    assertSame(low.asGiven(), high.asGiven(), factor);
  }

  private static void assertSame(PhaseMatch.Setting one, PhaseMatch.Setting other, double factor) {
    assertEquals(one.delayMs(), factor * other.delayMs(), 1e-6);
    assertEquals(one.lossDb(), other.lossDb(), 1e-6);
    assertEquals(one.flightLossDb(), other.flightLossDb(), 1e-6);
  }
}
