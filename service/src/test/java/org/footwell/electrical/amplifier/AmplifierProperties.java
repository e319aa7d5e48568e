package org.footwell.electrical.amplifier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.Answers;
import org.footwell.parts.Rails;
import org.footwell.parts.Ratings;

class AmplifierProperties {

  private static RailMatchResult result(RailMatchRequest request) {
    return Answers.of(new RailMatch(), request).result();
  }

  private static double power(double openCircuitV, double sagOhm, double loadOhm) {
    double voltage = openCircuitV * loadOhm / (loadOhm + sagOhm);
    return voltage * voltage / loadOhm;
  }

  private static void assertClose(double expected, double actual) {
    assertEquals(expected, actual, 1e-6 * Math.abs(expected) + 1e-9);
  }

  @Property
  void ratingsOfASourceGiveTheSourceBack(
      @ForAll @DoubleRange(min = 5, max = 150) double openCircuitV,
      @ForAll @DoubleRange(min = 0, max = 0.5) double sagPerLowestLoad,
      @ForAll @DoubleRange(min = 0.5, max = 8) double lowestOhm,
      @ForAll @DoubleRange(min = 1.3, max = 4) double step,
      @ForAll boolean three,
      @ForAll @DoubleRange(min = 0.3, max = 40) double loadOhm) {
    double sag = sagPerLowestLoad * lowestOhm;
    double middle = step * lowestOhm;
    double highest = step * middle;
    double[] points = {
      lowestOhm, power(openCircuitV, sag, lowestOhm), middle, power(openCircuitV, sag, middle)
    };
    if (three) {
      points =
          new double[] {
            points[0], points[1], points[2], points[3], highest, power(openCircuitV, sag, highest)
          };
    }
    RailMatchResult result = result(Requests.of(loadOhm, Requests.ratings(points)));
    assertClose(openCircuitV, result.openCircuitV());
    assertEquals(sag, result.sagOhm(), 1e-6 * lowestOhm);
    assertClose(power(openCircuitV, sag, loadOhm), result.cleanPowerW());
  }

  @Property
  void boundsEncloseThePower(
      @ForAll @DoubleRange(min = 10, max = 2000) double powerAtFour,
      @ForAll @DoubleRange(min = 0.3, max = 2.1) double growth,
      @ForAll @DoubleRange(min = 0.3, max = 2.1) double furtherGrowth,
      @ForAll @DoubleRange(min = 0.25, max = 40) double loadOhm,
      @ForAll Ratings.Basis basis) {
    Ratings ratings =
        Requests.ratings(
            basis,
            false,
            false,
            4,
            powerAtFour,
            2,
            growth * powerAtFour,
            1,
            growth * furtherGrowth * powerAtFour);
    RatedAmplifier amplifier = RatedAmplifier.of(ratings, false, false);
    SineSource.Delivery delivery = amplifier.into(loadOhm, 14.4);
    double rounding = 1e-9 * delivery.powerW();
    assertTrue(delivery.lowW() > 0);
    assertTrue(delivery.lowW() <= delivery.powerW() + rounding, delivery::toString);
    assertTrue(delivery.powerW() <= delivery.highW() + rounding, delivery::toString);
  }

  @Property
  void powerGrowsWithTheRail(
      @ForAll @DoubleRange(min = 5, max = 190) double railV,
      @ForAll @DoubleRange(min = 1.01, max = 2) double more,
      @ForAll @DoubleRange(min = 0, max = 4) double dropV,
      @ForAll @DoubleRange(min = 0, max = 2) double sagOhm,
      @ForAll @DoubleRange(min = 0.5, max = 16) double loadOhm,
      @ForAll @DoubleRange(min = 1, max = 100) double limitA) {
    RailMatchResult lower =
        result(Requests.of(loadOhm, Requests.rails(railV, dropV, limitA, sagOhm)));
    RailMatchResult higher =
        result(Requests.of(loadOhm, Requests.rails(more * railV, dropV, limitA, sagOhm)));
    assertTrue(higher.cleanPowerW() >= lower.cleanPowerW());
    assertTrue(higher.peakCurrentA() <= limitA * (1 + 1e-12));
  }

  @Property
  void bridgingRailsDoublesTheVoltageOfEachHalfOnHalfTheLoad(
      @ForAll @DoubleRange(min = 5, max = 190) double railV,
      @ForAll @DoubleRange(min = 0, max = 4) double dropV,
      @ForAll @DoubleRange(min = 0, max = 2) double sagOhm,
      @ForAll @DoubleRange(min = 1, max = 100) double limitA,
      @ForAll @DoubleRange(min = 0.5, max = 16) double loadOhm) {
    Rails rails = Requests.rails(railV, dropV, limitA, sagOhm);
    RailMatchResult half = result(Requests.of(loadOhm / 2, rails));
    RailMatchResult bridge = result(Requests.bridged(loadOhm, rails));
    assertClose(2 * half.voltageV(), bridge.voltageV());
    assertClose(half.peakCurrentA(), bridge.peakCurrentA());
  }

  @Property
  void bridgingRatingsDoublesTheVoltageOfEachHalfOnHalfTheLoad(
      @ForAll @DoubleRange(min = 10, max = 2000) double powerAtFour,
      @ForAll @DoubleRange(min = 0.5, max = 2.05) double growth,
      @ForAll @DoubleRange(min = 0.5, max = 40) double loadOhm) {
    Ratings ratings = Requests.ratings(4, powerAtFour, 2, growth * powerAtFour);
    RailMatchResult half = result(Requests.of(loadOhm / 2, ratings));
    RailMatchResult bridge = result(Requests.bridged(loadOhm, ratings));
    assertClose(2 * half.voltageV(), bridge.voltageV());
    assertClose(2 * half.cleanPowerLowW(), bridge.cleanPowerLowW());
    assertClose(2 * half.cleanPowerHighW(), bridge.cleanPowerHighW());
  }

  @Property
  void voltagesTimesKGivePowerTimesKSquared(
      @ForAll @DoubleRange(min = 10, max = 90) double railV,
      @ForAll @DoubleRange(min = 0, max = 4) double dropV,
      @ForAll @DoubleRange(min = 0, max = 2) double sagOhm,
      @ForAll @DoubleRange(min = 0.5, max = 4) double k,
      @ForAll @DoubleRange(min = 0.5, max = 16) double loadOhm) {
    RailMatchResult one = result(Requests.of(loadOhm, Requests.rails(railV, dropV, null, sagOhm)));
    RailMatchResult other =
        result(Requests.of(loadOhm, Requests.rails(k * railV, k * dropV, null, sagOhm)));
    assertClose(k * k * one.cleanPowerW(), other.cleanPowerW());
  }

  /** Away from the limits between what ratings look like, where a rounding may decide. */
  @Property
  void ratingsScaleLinearly(
      @ForAll @DoubleRange(min = 10, max = 2000) double powerAtFour,
      @ForAll @DoubleRange(min = 1.2, max = 1.9) double growth,
      @ForAll @DoubleRange(min = 0.1, max = 10) double k,
      @ForAll @DoubleRange(min = 0.3, max = 40) double loadOhm) {
    RailMatchResult one =
        result(Requests.of(loadOhm, Requests.ratings(4, powerAtFour, 2, growth * powerAtFour)));
    RailMatchResult other =
        result(
            Requests.of(
                loadOhm, Requests.ratings(4, k * powerAtFour, 2, k * growth * powerAtFour)));
    assertClose(k * one.cleanPowerW(), other.cleanPowerW());
  }

  @Property
  void unregulatedVoltageFollowsTheSupplyAndRegulatedStays(
      @ForAll @DoubleRange(min = 9, max = 32) double supplyV,
      @ForAll @DoubleRange(min = 0.3, max = 40) double loadOhm) {
    Ratings ratings = Requests.ratings(4, 100, 2, 160);
    double stated = RatedAmplifier.of(ratings, false, false).into(loadOhm, 14.4).powerW();
    double there = RatedAmplifier.of(ratings, false, false).into(loadOhm, supplyV).powerW();
    double regulated = RatedAmplifier.of(ratings, false, true).into(loadOhm, supplyV).powerW();
    assertClose(stated * supplyV * supplyV / (14.4 * 14.4), there);
    assertClose(stated, regulated);
  }
}
