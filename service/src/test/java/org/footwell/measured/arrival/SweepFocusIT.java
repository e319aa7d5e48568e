package org.footwell.measured.arrival;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("long")
class SweepFocusIT {

  @Test
  void aHundredLinearSweepsStop() {
    SweepFocusTest.linearSweepsStop(100);
  }
}
