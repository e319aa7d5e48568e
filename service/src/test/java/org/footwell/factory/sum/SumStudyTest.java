package org.footwell.factory.sum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.footwell.factory.sum.SumStudy.Trials;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What the page of limits promises, by single rows of its tables. */
@Tag("long")
class SumStudyTest {

  @Test
  void noiseThirtyDecibelsBelowLeavesTheAdviceRightAndFifteenDoesNot() {
    Trials at30 = SumStudy.run(SumStudy.noise(30));
    assertEquals(1, at30.hole());
    assertEquals(1, at30.polarity());
    assertEquals(1, at30.flat());
    assertTrue(at30.delayMs() < 0.1, at30::toString);
    Trials at15 = SumStudy.run(SumStudy.noise(15));
    assertTrue(at15.polarity() < 1 && at15.flat() < 0.5, at15::toString);
  }

  @Test
  void sixPointsAnOctaveDoNotFollowThePhaseAndTwelveDo() {
    Trials twelve = SumStudy.run(SumStudy.points(12));
    assertTrue(twelve.flat() == 1 && twelve.delayMs() < 0.02, twelve::toString);
    Trials six = SumStudy.run(SumStudy.points(6));
    assertTrue(six.flat() == 0 && six.delayMs() > 0.3, six::toString);
    assertEquals(1, six.hole());
  }

  @Test
  void aWrongReferenceGoesIntoTheAnswerUnseen() {
    assertEquals(0.1, SumStudy.run(SumStudy.clock(0.1)).delayMs(), 0.02);
    assertEquals(0, SumStudy.run(SumStudy.level(6)).flat());
  }
}
