package org.footwell.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ConductorsTest {

  @Test
  void betweenTwoSizesTheLineIsStraightOnLogarithmicAxes() {
    // 6 and 10 are the neighbours of 8: with lg(1.91/3.30)/lg(10/6) = −1.0704 it is
    // 3.30·(8/6)^−1.0704 = 2.42534.
    assertEquals(2.42534, Conductors.CLASS_5_OHM_PER_KM.at(8), 0.00001);
    assertFalse(Conductors.isStandard(8));
    assertTrue(Conductors.isStandard(0.75));
  }

  @Test
  void belowTheSmallestSizeResistanceTimesAreaStays() {
    // 0.5·39.0 = 0.75·26.0 = 19.5, so the first piece has slope −1: 19.5/0.2 = 97.5.
    assertEquals(97.5, Conductors.CLASS_5_OHM_PER_KM.at(0.2), 1e-9);
  }

  @Test
  void moreCopperHasLessResistance() {
    double before = Double.MAX_VALUE;
    for (double area = 0.2; area <= 240; area *= 1.02) {
      double now = Conductors.CLASS_5_OHM_PER_KM.at(area);
      assertTrue(now < before, "at " + area);
      before = now;
    }
  }

  @Test
  void copperGainsThirtyOnePercentAtHundredDegrees() {
    assertEquals(1.3144, Conductors.CONDUCTOR_OHM.at(1000, 1, 100), 1e-12);
  }
}
