package org.footwell.factory.sum;

import static org.footwell.factory.sum.SumBench.filter;
import static org.footwell.factory.sum.SumBench.output;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.parts.Filter.Kind;

class SignalSumProperties {

  private static SumBench two(double hz, double delayMs, int polarity, double gainDb) {
    SumBench bench = new SumBench();
    bench.with(output("low").lowPass(filter(Kind.BUTTERWORTH, 3, hz)).gainDb(gainDb));
    bench.with(
        output("high")
            .highPass(filter(Kind.BUTTERWORTH, 3, hz))
            .delayMs(delayMs)
            .polarity(polarity)
            .gainDb(gainDb));
    return bench;
  }

  @Property(tries = 25)
  void theBestIsNeverMoreThanHalfADecibelWorseThanNow(
      @ForAll @DoubleRange(min = 100, max = 5000) double hz,
      @ForAll @DoubleRange(min = 0, max = 3) double delay,
      @ForAll boolean turned) {
    SignalSumResult result = two(hz, delay, turned ? -1 : 1, 0).result();
    assertTrue(result.best().spreadDb() <= result.sum().spreadDb() + 0.5);
  }

  @Property(tries = 25)
  void louderAltogetherMovesTheMedianOnly(
      @ForAll @DoubleRange(min = -20, max = 20) double gain,
      @ForAll @DoubleRange(min = 0, max = 2) double delay) {
    SignalSumResult one = two(1000, delay, 1, 0).result();
    SignalSumResult other = two(1000, delay, 1, gain).result();
    assertEquals(one.sum().medianDb() + gain, other.sum().medianDb(), 1e-9);
    assertEquals(one.sum().spreadDb(), other.sum().spreadDb(), 1e-9);
    assertEquals(one.outputs(), other.outputs());
  }

  @Property(tries = 25)
  void noSumIsLouderThanAllInPhase(
      @ForAll @DoubleRange(min = 100, max = 5000) double hz,
      @ForAll @DoubleRange(min = 0, max = 3) double delay) {
    two(hz, delay, 1, 0)
        .result()
        .points()
        .forEach(point -> assertTrue(point.levelDb() <= point.inPhaseLevelDb() + 1e-9));
  }
}
