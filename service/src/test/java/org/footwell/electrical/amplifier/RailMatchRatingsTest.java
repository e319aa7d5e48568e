package org.footwell.electrical.amplifier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.electrical.amplifier.RailMatchResult.AtSupply;
import org.footwell.parts.Ratings;
import org.junit.jupiter.api.Test;

class RailMatchRatingsTest {

  @Test
  void unregulatedRatingsFollowTheSquareOfTheSupply() {
    AtSupply at12 =
        Requests.result(Requests.of(4, Requests.ratings(4, 100, 2, 160))).atSupply().get(2);
    assertEquals(100 * 144 / 207.36, at12.cleanPowerW(), 1e-9);
    assertEquals(20 * 12 / 14.4, at12.voltageV(), 1e-9);
  }

  @Test
  void aboveTheRatedLoadsTheHeldVoltageIsTheLowerBound() {
    Answer<RailMatchResult> answer =
        Requests.answer(Requests.of(8, Requests.ratings(4, 100, 2, 160)));
    assertEquals(56.4685, answer.result().cleanPowerW(), 5e-5);
    assertEquals(50, answer.result().cleanPowerLowW(), 1e-9); // 20²/8
    assertEquals(56.4685, answer.result().cleanPowerHighW(), 5e-5);
    assertEquals(List.of("outside-rated-loads"), Answers.codes(answer));
    assertEquals(
        "The load of 8 ohm lies beyond the nearest rated load of 4 ohm: expect between 50 and"
            + " 56.47 W.",
        answer.findings().get(0).inFull());
  }

  @Test
  void belowTheRatedLoadsTheHeldCurrentIsTheLowerBound() {
    RailMatchResult result = Requests.result(Requests.of(1, Requests.ratings(4, 100, 2, 160)));
    assertEquals(80, result.cleanPowerLowW(), 1e-9); // 160 W into 2 ohm is 80 A²
    assertEquals(218.1510, result.cleanPowerW(), 5e-4); // (22.6766/1.535322)²
    assertEquals(result.cleanPowerW(), result.cleanPowerHighW(), 0);
  }

  @Test
  void bridgingTwoRatedChannelsDoublesVoltageWithHalfTheLoadEach() {
    RailMatchResult result = Requests.result(Requests.bridged(8, Requests.ratings(4, 100, 2, 160)));
    assertEquals(200, result.cleanPowerW(), 1e-9);
    assertEquals(40, result.voltageV(), 1e-9);
    assertEquals(2 * 22.6766, result.openCircuitV(), 1e-4);
    assertEquals(2 * 0.535322, result.sagOhm(), 1e-6);
    assertEquals(4, result.halfLoadOhm(), 0);
  }

  @Test
  void bridgedRatingsServeABridgeAsTheyAreAndOneChannelHalved() {
    Ratings bridged = Requests.ratings(Ratings.Basis.CLEAN, true, false, 8, 200, 4, 320);
    assertEquals(200, Requests.result(Requests.bridged(8, bridged)).cleanPowerW(), 1e-9);
    Answer<RailMatchResult> single = Requests.answer(Requests.of(4, bridged));
    assertEquals(100, single.result().cleanPowerW(), 1e-9);
    assertEquals(List.of("bridged-ratings-halved"), Answers.codes(single));
  }

  @Test
  void tenPercentRatingsAreConvertedWithBounds() {
    Ratings ratings = Requests.ratings(Ratings.Basis.THD_10, false, false, 4, 125, 2, 200);
    Answer<RailMatchResult> answer = Requests.answer(Requests.of(4, ratings));
    assertEquals(100, answer.result().cleanPowerW(), 1e-9);
    assertEquals(125 / 1.3, answer.result().cleanPowerLowW(), 1e-9);
    assertEquals(125 / 1.2, answer.result().cleanPowerHighW(), 1e-9);
    assertEquals(List.of("basis-not-clean"), Answers.codes(answer));
  }

  @Test
  void squareWaveRatingsAreHalved() {
    Ratings ratings = Requests.ratings(Ratings.Basis.SQUARE_WAVE, false, true, 4, 50, 2, 80);
    Answer<RailMatchResult> answer = Requests.answer(Requests.of(4, ratings));
    assertEquals(25, answer.result().cleanPowerW(), 1e-9);
    assertEquals(List.of("basis-not-clean"), Answers.codes(answer));
  }

  @Test
  void powerThatDoublesIntoHalfTheLoadLooksRegulated() {
    Answer<RailMatchResult> answer =
        Requests.answer(Requests.of(3, Requests.ratings(4, 75, 2, 150)));
    assertEquals(RatingsFit.Look.REGULATED, answer.result().character());
    assertEquals(0, answer.result().sagOhm(), 1e-12);
    assertEquals(100, answer.result().cleanPowerW(), 1e-9);
    assertEquals(List.of("ratings-regulated"), Answers.codes(answer));
  }

  @Test
  void equalPowersLookPowerLimitedAndOnlyBoundsRemain() {
    Ratings ratings = Requests.ratings(4, 100, 2, 100);
    Answer<RailMatchResult> between = Requests.answer(Requests.of(Math.sqrt(8), ratings));
    assertEquals(RatingsFit.Look.POWER_LIMITED, between.result().character());
    assertEquals(100, between.result().cleanPowerW(), 1e-9);
    assertEquals(100 / Math.sqrt(2), between.result().cleanPowerLowW(), 1e-9);
    assertEquals(100 * Math.sqrt(2), between.result().cleanPowerHighW(), 1e-9);
    assertNull(between.result().openCircuitV());
    assertNull(between.result().sagOhm());
    assertEquals(List.of("ratings-power-limited"), Answers.codes(between));

    for (double load : new double[] {8, 1}) {
      RailMatchResult beyond = Requests.result(Requests.of(load, ratings));
      assertEquals(50, beyond.cleanPowerW(), 1e-9); // 20²/8 and 50 A²·1
      assertEquals(50, beyond.cleanPowerLowW(), 1e-9);
      assertEquals(100, beyond.cleanPowerHighW(), 1e-9);
    }
  }

  @Test
  void aLimitAtTheLowestLoadAloneIsSeen() {
    RailMatchResult result =
        Requests.result(Requests.of(4, Requests.ratings(8, 60, 4, 100, 2, 105)));
    assertEquals(RatingsFit.Look.POWER_LIMITED, result.character());
    assertEquals(100, result.cleanPowerW(), 1e-9);
  }

  @Test
  void threeRatingsOfOneSourceLeaveNoResidual() {
    // 30 V behind 1 ohm: 88.9 W into 8, 144 W into 4, 200 W into 2.
    RailMatchResult result =
        Requests.result(Requests.of(3, Requests.ratings(8, 800 / 9.0, 4, 144, 2, 200)));
    assertEquals(30, result.openCircuitV(), 1e-9);
    assertEquals(1, result.sagOhm(), 1e-9);
    assertEquals(0, result.residualRmsDb(), 1e-9);
    assertEquals(0, result.residualLargestDb(), 1e-9);
    assertEquals(168.75, result.cleanPowerW(), 1e-9);
  }

  @Test
  void ratingsThatNoSourceExplainsAreSaidToBeInconsistent() {
    Answer<RailMatchResult> answer =
        Requests.answer(Requests.of(4, Requests.ratings(8, 100, 4, 110, 2, 200)));
    assertEquals(RatingsFit.Look.INCONSISTENT, answer.result().character());
    assertTrue(answer.result().residualLargestDb() > 0.5);
    assertTrue(answer.result().residualRmsDb() <= answer.result().residualLargestDb());
    assertEquals(110, answer.result().cleanPowerW(), 1e-9); // the rating itself
    assertEquals(List.of("ratings-inconsistent"), Answers.codes(answer));
  }

  @Test
  void currentThatFallsIntoLowerLoadsHasNoSource() {
    RailMatchResult result = Requests.result(Requests.of(1, Requests.ratings(4, 100, 2, 40)));
    assertEquals(RatingsFit.Look.INCONSISTENT, result.character());
    assertNull(result.openCircuitV());
    assertEquals(20, result.cleanPowerW(), 1e-9); // 20 A²·1 ohm
    assertEquals(40, result.cleanPowerHighW(), 1e-9);
  }

  @Test
  void slightlyNegativeSagIsAFindingAndNotExtrapolated() {
    Answer<RailMatchResult> answer =
        Requests.answer(Requests.of(1, Requests.ratings(4, 100, 2, 205)));
    assertEquals(List.of("sag-negative", "outside-rated-loads"), Answers.codes(answer));
    // U 20 and √410 V, I 5 and √102.5 A.
    assertEquals(-0.0485, answer.result().sagOhm(), 5e-5);
    assertEquals(410, answer.result().cleanPowerW(), 1e-6); // voltage held
    assertEquals(102.5, answer.result().cleanPowerLowW(), 1e-9); // current held
  }

  @Test
  void grosslyNegativeSagIsRefused() {
    Fault fault = Requests.onlyFault(Requests.of(4, Requests.ratings(4, 100, 2, 260)));
    assertEquals("sag-grossly-negative", fault.code());
    assertEquals("/amplifier/ratings/points", fault.pointer());
  }

  @Test
  void nearlyEqualLoadsAreRefused() {
    Fault fault = Requests.onlyFault(Requests.of(4, Requests.ratings(4, 100, 4.3, 95)));
    assertEquals("loads-without-spread", fault.code());
    assertEquals("/amplifier/ratings/points", fault.pointer());
  }

  @Test
  void onASingleSupplyOnlySoMuchIsClean() {
    // 14.4 V: 25.92 W of sine into 4 ohm, 51.84 W into 2 ohm.
    Ratings ratings = Requests.ratings(Ratings.Basis.CLEAN, false, true, 4, 34, 2, 68.2);
    Answer<RailMatchResult> answer = Requests.answer(Requests.of(4, ratings));
    assertEquals(25.92, answer.result().cleanPowerW(), 1e-9);
    assertTrue(
        Answers.codes(answer).containsAll(List.of("rating-not-clean", "rating-only-square-wave")));
    assertEquals(
        "/amplifier/ratings/points/0/power_w", finding(answer, "rating-not-clean").pointer());
    assertEquals(25.92, finding(answer, "rating-not-clean").limit(), 1e-9);
    assertEquals(
        "/amplifier/ratings/points/1/power_w",
        finding(answer, "rating-only-square-wave").pointer());
    assertEquals(
        11 * 11 / 8.0, answer.result().atSupply().get(0).cleanPowerW(), 1e-9); // capped there too
  }

  private static Finding finding(Answer<?> answer, String code) {
    return answer.findings().stream().filter(f -> f.code().equals(code)).findFirst().orElseThrow();
  }

  @Test
  void moreThanASquareWaveOfTheSupplyIsImpossible() {
    Fault fault =
        Requests.onlyFault(
            Requests.of(
                4, Requests.ratings(Ratings.Basis.SQUARE_WAVE, false, true, 4, 60, 2, 100)));
    assertEquals("rating-impossible", fault.code());
    assertEquals("/amplifier/ratings/points/0/power_w", fault.pointer());
  }
}
