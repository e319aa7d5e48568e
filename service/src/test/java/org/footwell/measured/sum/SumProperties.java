package org.footwell.measured.sum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.footwell.measured.response.MadeUpResponse;

class SumProperties {

  private static LoudspeakerSumResult of(int later, double low, double high) {
    return new SumSession()
        .position(
            MadeUpResponse.click(9600, 2000, low), MadeUpResponse.click(9600, 2000 + later, high))
        .result();
  }

  @Property(tries = 30)
  void theDelayPutInIsTheOneTakenOut(
      @ForAll @IntRange(min = -30, max = 30) int later,
      @ForAll @DoubleRange(min = 0.1, max = 1) double level) {
    LoudspeakerSumResult result = of(later, 0.5, level);
    // A sample or two lose less than a delay is worth.
    boolean worth = result.asSet().lossDb() < -0.051;
    assertEquals(
        worth || result.best().delayMs() != 0 ? -later / 48.0 : 0, result.best().delayMs(), 0.002);
    assertEquals(1, result.best().polarity());
    assertEquals(0, result.best().lossDb(), 0.051);
  }

  @Property(tries = 20)
  void nothingSumsAboveBothInPhaseAndTheBestIsNoWorse(
      @ForAll @IntRange(min = -100, max = 100) int later,
      @ForAll @DoubleRange(min = -1, max = -0.1) double level) {
    LoudspeakerSumResult result = of(later, 0.5, level);
    assertTrue(result.best().lossDb() <= 0, result::toString);
    assertTrue(result.best().lossDb() >= result.asSet().lossDb() - 1e-9, result::toString);
    assertTrue(result.best().lossDb() >= result.otherPolarity().lossDb() - 0.11, result::toString);
  }
}
