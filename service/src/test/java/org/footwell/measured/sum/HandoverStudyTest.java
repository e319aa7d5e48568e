package org.footwell.measured.sum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.footwell.measured.sum.HandoverStudy.Trials;
import org.junit.jupiter.api.Test;

/** What the page of limits promises, by single rows of its tables. */
class HandoverStudyTest {

  @Test
  void noiseIsRemarkedOnBeforeTheSettingToldCosts() {
    Trials at50 = HandoverStudy.run(HandoverStudy.noise(-50));
    assertTrue(at50.polarity() == 1 && at50.lossDb() < 0.2, at50::toString);
    Trials at40 = HandoverStudy.run(HandoverStudy.noise(-40));
    assertTrue(at40.polarity() < 1 && at40.lossDb() > 1, at40::toString);
    assertEquals(1, at40.told());
  }

  @Test
  void aReflectionAsStrongAsTheSoundTurnsThePolarityAndIsRemarkedOn() {
    Trials weak = HandoverStudy.run(HandoverStudy.reflection(-6, 0.5));
    assertTrue(weak.polarity() == 1 && weak.lossDb() < 0.05, weak::toString);
    Trials strong = HandoverStudy.run(HandoverStudy.reflection(0, 0.5));
    assertTrue(strong.polarity() < 1 && strong.told() == 1, strong::toString);
  }

  @Test
  void recordingsThatDoNotStartTogetherGoIntoTheAnswerUnseen() {
    Trials late = HandoverStudy.run(HandoverStudy.clock(8));
    assertEquals(8 / 48.0, late.delayMs(), 0.001);
    assertEquals(0, late.told());
    assertEquals(1.75, late.lossDb(), 0.01);
  }
}
