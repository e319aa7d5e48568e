package org.footwell.electrical.amplifier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.Answers;
import org.footwell.electrical.amplifier.AmplifierRatingsResult.Prediction;
import org.footwell.parts.BridgedRatings;
import org.footwell.parts.Ratings;

class AmplifierRatingsProperties {

  private static List<Prediction> predictions(
      Ratings ratings, BridgedRatings bridged, double loadOhm, double supplyV) {
    AmplifierRatingsRequest request =
        Requests.predicted(ratings, loadOhm)
            .bridgedRatings(bridged)
            .suppliesV(List.of(supplyV))
            .build();
    return Answers.of(new AmplifierRatings(), request).result().predictions();
  }

  private static void assertClose(double expected, double actual) {
    assertEquals(expected, actual, 1e-9 * Math.abs(expected));
  }

  @Property
  void theSameIsPredictedAsForTheLoadAlone(
      @ForAll @DoubleRange(min = 10, max = 2000) double powerAtFour,
      @ForAll @DoubleRange(min = 0.5, max = 2.05) double growth,
      @ForAll @DoubleRange(min = 0.25, max = 40) double loadOhm,
      @ForAll boolean bridged) {
    Ratings ratings = Requests.ratings(4, powerAtFour, 2, growth * powerAtFour);
    RailMatchResult alone =
        Requests.result(Requests.into(loadOhm).ratings(ratings).bridged(bridged).build());
    Prediction prediction = predictions(ratings, null, loadOhm, 14.4).get(bridged ? 1 : 0);
    assertClose(alone.cleanPowerW(), prediction.cleanPowerW());
    assertClose(alone.cleanPowerLowW(), prediction.cleanPowerLowW());
    assertClose(alone.cleanPowerHighW(), prediction.cleanPowerHighW());
  }

  @Property
  void aPublishedBridgedPowerIsPredictedAsItIsWithTheSingleChannelsWithinBounds(
      @ForAll @DoubleRange(min = 1.2, max = 1.9) double growth,
      @ForAll @DoubleRange(min = 1, max = 16) double loadOhm,
      @ForAll @DoubleRange(min = 50, max = 1000) double publishedW) {
    Ratings ratings = Requests.ratings(4, 100, 2, growth * 100);
    BridgedRatings bridged =
        new BridgedRatings(null, null, List.of(new Ratings.Point(loadOhm, publishedW)));
    Prediction without = predictions(ratings, null, loadOhm, 14.4).get(1);
    Prediction with = predictions(ratings, bridged, loadOhm, 14.4).get(1);
    assertClose(publishedW, with.cleanPowerW());
    assertTrue(with.cleanPowerLowW() <= without.cleanPowerLowW());
    assertTrue(with.cleanPowerHighW() >= without.cleanPowerHighW());
    assertTrue(with.cleanPowerLowW() <= publishedW * (1 + 1e-9));
    assertTrue(with.cleanPowerHighW() >= publishedW * (1 - 1e-9));
  }

  @Property
  void allPowersScaleTogether(
      @ForAll @DoubleRange(min = 1.2, max = 1.9) double growth,
      @ForAll @DoubleRange(min = 0.1, max = 10) double k,
      @ForAll @DoubleRange(min = 0.3, max = 40) double loadOhm,
      @ForAll @DoubleRange(min = 9, max = 18) double supplyV) {
    List<Prediction> one =
        predictions(Requests.ratings(4, 100, 2, growth * 100), null, loadOhm, supplyV);
    List<Prediction> other =
        predictions(Requests.ratings(4, k * 100, 2, k * growth * 100), null, loadOhm, supplyV);
    for (int i = 0; i < one.size(); i++) {
      assertEquals(k * one.get(i).cleanPowerW(), other.get(i).cleanPowerW(), 1e-6 * k * 1000);
    }
  }

  @Property
  void powerFollowsTheSquareOfTheSupply(
      @ForAll @DoubleRange(min = 9, max = 18) double supplyV,
      @ForAll @DoubleRange(min = 0.3, max = 40) double loadOhm) {
    Ratings ratings = Requests.ratings(4, 100, 2, 160);
    double stated = predictions(ratings, null, loadOhm, 14.4).get(0).cleanPowerW();
    double there = predictions(ratings, null, loadOhm, supplyV).get(0).cleanPowerW();
    assertClose(stated * supplyV * supplyV / (14.4 * 14.4), there);
  }
}
