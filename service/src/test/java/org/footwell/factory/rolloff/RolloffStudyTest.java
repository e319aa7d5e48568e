package org.footwell.factory.rolloff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.footwell.factory.rolloff.RolloffStudy.Trials;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What the page of limits promises, by single rows of its tables. */
@Tag("long")
class RolloffStudyTest {

  @Test
  void eightSecondsTellAShelfAndTwoAreRemarkedOn() {
    Trials eight = RolloffStudy.run(RolloffStudy.seconds(8));
    assertTrue(eight.right() == 1 && eight.told() == 0, eight::toString);
    assertEquals(eight.truth(), (eight.least() + eight.most()) / 2, 0.3, eight::toString);
    Trials two = RolloffStudy.run(RolloffStudy.seconds(2));
    assertTrue(two.told() == 1 && two.most() - two.least() > 2, two::toString);
    assertEquals(1, RolloffStudy.run(RolloffStudy.seconds(0.3)).refused());
  }

  @Test
  void rumbleAsLoudAsTheLowestStepMakesAFalseStepAndIsRemarkedOn() {
    RolloffStudy.Trouble little = RolloffStudy.rumble(-10).holdingNothingBack();
    little.seconds = 15;
    assertEquals(1, RolloffStudy.run(little).right());
    RolloffStudy.Trouble much = RolloffStudy.rumble(0).holdingNothingBack();
    much.seconds = 15;
    Trials trials = RolloffStudy.run(much);
    assertTrue(trials.right() == 0 && trials.told() == 1, trials::toString);
  }
}
