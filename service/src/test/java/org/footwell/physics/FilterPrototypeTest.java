package org.footwell.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FilterPrototypeTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void everyKindIsAtItsCornerWhereItShouldBe(int order) {
    for (AnalogFilter butterworth : both(FilterPrototype.butterworth(order))) {
      assertEquals(-3.0103, butterworth.magnitudeDb(80), 1e-5);
    }
    for (AnalogFilter bessel : both(FilterPrototype.bessel(order).halfPowerAtOne())) {
      assertEquals(-3.0103, bessel.magnitudeDb(80), 1e-5);
    }
    if (order % 2 == 0) {
      for (AnalogFilter linkwitzRiley : both(FilterPrototype.linkwitzRiley(order))) {
        assertEquals(-6.0206, linkwitzRiley.magnitudeDb(80), 1e-5);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void phaseMatchedBesselHasTurnedHalfwayAtTheCorner(int order) {
    FilterPrototype matched = FilterPrototype.bessel(order).phaseMatchedAtOne();
    double lag = matched.lowPass(80).phaseDeg(80);
    assertEquals(lag, -matched.highPass(80).phaseDeg(80), 1e-8);
    double slopes = matched.lowPass(80).magnitudeDb(8e7) - matched.highPass(80).magnitudeDb(8e-5);
    assertEquals(0, slopes, 1e-6);
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 4, 6, 8})
  void lowAndHighPassOfOneLinkwitzRileyPairAreDelayedAlikeEverywhere(int order) {
    FilterPrototype pair = FilterPrototype.linkwitzRiley(order);
    for (double f : new double[] {0, 20, 80, 300, 5000}) {
      assertEquals(pair.lowPass(80).groupDelayMs(f), pair.highPass(80).groupDelayMs(f), 1e-12);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void groupDelayIsTheSlopeOfThePhase(int order) {
    double f = 123;
    double step = 1e-3;
    for (AnalogFilter filter : both(FilterPrototype.bessel(order).halfPowerAtOne())) {
      double slope = (filter.phaseDeg(f - step) - filter.phaseDeg(f + step)) / (2 * step);
      assertEquals(1000 * slope / 360, filter.groupDelayMs(f), 1e-6);
    }
  }

  @Test
  void whatDoesNotExistIsNotMade() {
    assertThrows(IllegalArgumentException.class, () -> FilterPrototype.linkwitzRiley(3));
    assertThrows(IllegalArgumentException.class, () -> FilterPrototype.bessel(9));
  }

  private static List<AnalogFilter> both(FilterPrototype prototype) {
    return List.of(prototype.lowPass(80), prototype.highPass(80));
  }
}
