package org.footwell.measured.arrival;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The trials of {@link SweepFocusTest}, many of them. */
@Tag("long")
class SweepFocusIT {

  @Test
  void anotherLengthIsFoundAndPolarityNotTold() {
    SweepFocusTest.anotherLengthIsFound(3);
  }

  @Test
  void theRightLengthIsNotRemarkedOn() {
    SweepFocusTest.theRightLengthIsNotRemarkedOn(4);
  }

  @Test
  void aLinearSweepStops() {
    SweepFocusTest.linearSweepsStop(100);
  }
}
