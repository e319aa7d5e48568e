package org.footwell.factory.clip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.footwell.factory.clip.ClipStudy.Trials;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What the page of limits promises, by single rows of its tables. */
@Tag("long")
class ClipStudyTest {

  @Test
  void whiteNoiseTwentyDecibelsBelowStillLeavesTheRightStepAndFiveDoesNot() {
    Trials at20 = ClipStudy.run(ClipStudy.noise(20));
    assertTrue(at20.good() && at20.right() == 1, at20::toString);
    Trials at5 = ClipStudy.run(ClipStudy.noise(5));
    assertTrue(at5.right() < 0.5 && !at5.good(), at5::toString);
    assertEquals(1, at5.told(), at5::toString);
  }

  @Test
  void humBetweenTheHarmonicsDoesNoHarmAndHumOnOneDoes() {
    assertTrue(ClipStudy.run(ClipStudy.hum(10, 50)).good());
    Trials on = ClipStudy.run(ClipStudy.hum(20, ToneBench.TONE_HZ * 2 / 3));
    assertTrue(!on.good() && on.right() < 1, on::toString);
  }

  @Test
  void tooFewPeriodsAndAFrequencyFarOffAreRefused() {
    assertTrue(ClipStudy.run(ClipStudy.periods(12.2)).good());
    assertEquals(1, ClipStudy.run(ClipStudy.periods(11.5)).refused());
    assertTrue(ClipStudy.run(ClipStudy.stated(4.9)).good());
    assertEquals(1, ClipStudy.run(ClipStudy.stated(6)).refused());
  }
}
