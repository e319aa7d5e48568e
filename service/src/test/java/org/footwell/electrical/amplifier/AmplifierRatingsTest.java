package org.footwell.electrical.amplifier;

import static org.footwell.electrical.amplifier.Requests.predicted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Step;
import org.footwell.calculation.Verdict;
import org.footwell.electrical.amplifier.AmplifierRatingsResult.Bridge;
import org.footwell.electrical.amplifier.AmplifierRatingsResult.Growth;
import org.footwell.electrical.amplifier.AmplifierRatingsResult.Prediction;
import org.footwell.electrical.amplifier.AmplifierRatingsResult.Rated;
import org.footwell.parts.BridgedRatings;
import org.footwell.parts.Ratings;
import org.footwell.parts.Ratings.Basis;
import org.junit.jupiter.api.Test;

class AmplifierRatingsTest {

  private static final double TINY = 1e-9;
  private static final Ratings PLAIN = Requests.ratings(4, 100, 2, 160);

  private static BridgedRatings bridged(double... loadsAndPowers) {
    return new BridgedRatings(null, null, Requests.ratings(loadsAndPowers).points());
  }

  private static Answer<AmplifierRatingsResult> answer(RatedRequest request) {
    return Answers.of(new AmplifierRatings(), request.build());
  }

  private static AmplifierRatingsResult result(RatedRequest request) {
    return answer(request).result();
  }

  private static Fault onlyFault(RatedRequest request) {
    List<Fault> faults = Answers.faults(new AmplifierRatings(), request.build());
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }

  private static Finding finding(Answer<?> answer, String code) {
    return answer.findings().stream().filter(f -> f.code().equals(code)).findFirst().orElseThrow();
  }

  private static void assertPrediction(
      double load,
      double supply,
      boolean bridged,
      double power,
      double low,
      double high,
      Prediction actual) {
    assertEquals(load, actual.loadOhm(), 0);
    assertEquals(supply, actual.supplyV(), 0);
    assertEquals(bridged, actual.bridged());
    assertEquals(power, actual.cleanPowerW(), 5e-4);
    assertEquals(low, actual.cleanPowerLowW(), 5e-4);
    assertEquals(high, actual.cleanPowerHighW(), 5e-4);
  }

  /** The numbers of docs/method/amplifier-ratings.md, worked by hand. */
  @Test
  void workedExample() {
    RatedRequest request =
        predicted(PLAIN, 2, 8).bridgedRatings(bridged(4, 300)).suppliesV(List.of(12.0, 14.4));
    Answer<AmplifierRatingsResult> answer = answer(request);
    AmplifierRatingsResult result = answer.result();
    assertEquals(22.6766, result.openCircuitV(), 5e-5);
    assertEquals(0.535322, result.sagOhm(), 5e-7);
    assertEquals(RatingsFit.Look.ORDINARY, result.character());
    assertNull(result.residualRmsDb());
    assertNull(result.residualLargestDb());
    Growth growth = result.growth().get(0);
    assertEquals(4, growth.fromLoadOhm(), 0);
    assertEquals(2, growth.toLoadOhm(), 0);
    assertEquals(1.6, growth.powerRatio(), TINY);
    assertEquals(1.6, growth.powerRatioPerHalving(), TINY);
    Bridge bridge = result.bridge().get(0);
    assertEquals(300, bridge.publishedW(), TINY);
    assertEquals(320, bridge.expectedW(), TINY); // two times 160 W
    assertEquals(-0.2803, bridge.differenceDb(), 5e-5); // 10·lg(300/320)
    List<Prediction> predictions = result.predictions();
    assertEquals(8, predictions.size());
    double at12 = 12 * 12 / (14.4 * 14.4);
    assertPrediction(2, 12, false, 160 * at12, 160 * at12, 160 * at12, predictions.get(0));
    // 1 ohm each: 218.151 W, at least 80 A²·1 ohm; both times 2, the level set by 300/320.
    double level = 300.0 / 320;
    assertPrediction(
        2,
        12,
        true,
        436.302 * level * at12,
        160 * level * at12,
        436.302 * at12,
        predictions.get(1));
    assertPrediction(2, 14.4, false, 160, 160, 160, predictions.get(2));
    assertPrediction(8, 14.4, false, 56.4685, 50, 56.4685, predictions.get(6));
    assertPrediction(8, 14.4, true, 200 * level, 200 * level, 200, predictions.get(7));
    assertTrue(predictions.get(6).outsideRatedLoads());
    assertFalse(predictions.get(7).outsideRatedLoads());
    assertEquals(
        List.of("below-lowest-rated", "outside-rated-loads", "power-does-not-double"),
        Answers.codes(answer));
    // 2 ohm per channel is published, 2 ohm across the bridge is not: each half sees 1 ohm.
    Finding below = answer.findings().get(0);
    assertEquals("/loads_ohm/0", below.pointer());
    assertEquals(4.0, below.limit());
    assertEquals(Verdict.WARNING, answer.verdict());
    assertEquals(
        "From 4 to 2 ohm the power grows 1.6 times per halving of the load, where a supply that"
            + " does not sag gives 2 times: the ratings show 0.5353 ohm of sag.",
        finding(answer, "power-does-not-double").inFull());
  }

  @Test
  void withoutSuppliesTheStatedOneIsPredictedFor() {
    List<Prediction> predictions = result(predicted(PLAIN, 4)).predictions();
    assertEquals(2, predictions.size());
    assertPrediction(4, 14.4, false, 100, 100, 100, predictions.get(0));
    assertNull(result(predicted(PLAIN, 4)).bridge());
  }

  @Test
  void aRegulatedSupplyKeepsItsPower() {
    RatedRequest request = predicted(PLAIN, 4).supplyRegulated(true).suppliesV(List.of(11.0));
    assertEquals(100, result(request).predictions().get(0).cleanPowerW(), TINY);
  }

  @Test
  void growthIsToldPerHalvingWhateverTheStep() {
    AmplifierRatingsResult result = result(predicted(Requests.ratings(2, 150, 8, 60), 4));
    assertEquals(8, result.growth().get(0).fromLoadOhm(), 0);
    assertEquals(2.5, result.growth().get(0).powerRatio(), TINY);
    assertEquals(Math.sqrt(2.5), result.growth().get(0).powerRatioPerHalving(), TINY);
  }

  @Test
  void theSmallestGrowthIsTheOneRemarkedOn() {
    // 30 V behind 1 ohm: 88.9 W into 8, 144 W into 4, 200 W into 2.
    Answer<AmplifierRatingsResult> answer =
        answer(predicted(Requests.ratings(8, 800 / 9.0, 4, 144, 2, 200), 4));
    Finding finding = finding(answer, "power-does-not-double");
    assertEquals(200.0 / 144, finding.value(), TINY);
    assertEquals(2, finding.limit(), 0);
    assertEquals(0, answer.result().residualLargestDb(), TINY);
    Rated highest = answer.result().rated().get(2);
    assertEquals(8, highest.loadOhm(), 0);
    assertEquals(800 / 9.0, highest.fittedPowerW(), TINY);
    assertEquals(0, highest.residualDb(), TINY);
  }

  @Test
  void powerThatDoublesIsSaidToLookRegulated() {
    Answer<AmplifierRatingsResult> answer = answer(predicted(Requests.ratings(4, 75, 2, 150), 4));
    assertEquals(List.of("ratings-regulated"), Answers.codes(answer));
    assertEquals(2, answer.result().growth().get(0).powerRatioPerHalving(), TINY);
  }

  @Test
  void aRatingAboveTheLineHasAPositiveResidual() {
    List<Rated> rated =
        result(predicted(Requests.ratings(8, 800 / 9.0, 4, 150, 2, 200), 4)).rated();
    assertTrue(rated.get(1).residualDb() > 0);
    assertTrue(rated.get(0).residualDb() < 0);
    assertTrue(rated.get(2).residualDb() < 0);
    assertEquals(
        10 * Math.log10(150 / rated.get(1).fittedPowerW()), rated.get(1).residualDb(), TINY);
  }

  @Test
  void powerLimitedRatingsNameNoSource() {
    Answer<AmplifierRatingsResult> answer = answer(predicted(Requests.ratings(4, 100, 2, 100), 3));
    assertEquals(RatingsFit.Look.POWER_LIMITED, answer.result().character());
    assertNull(answer.result().openCircuitV());
    assertNull(answer.result().sagOhm());
    // 3 ohm bridged is 1.5 ohm on each channel, and 2 ohm is the lowest published.
    assertEquals(List.of("ratings-power-limited", "below-lowest-rated"), Answers.codes(answer));
  }

  @Test
  void currentThatFallsIntoLowerLoadsHasNothingToCompareWith() {
    Rated rated = result(predicted(Requests.ratings(4, 100, 2, 40), 3)).rated().get(0);
    assertNull(rated.fittedPowerW());
    assertNull(rated.residualDb());
  }

  @Test
  void twoPowersForOneLoadCountAsTheirMeanInTheGrowth() {
    AmplifierRatingsResult result = result(predicted(Requests.ratings(4, 99, 4, 101, 2, 160), 4));
    assertEquals(1, result.growth().size());
    assertEquals(1.6, result.growth().get(0).powerRatio(), TINY);
    assertEquals(3, result.rated().size());
  }

  @Test
  void moreBridgedPowerThanTheSingleChannelsPromiseIsAWarning() {
    Answer<AmplifierRatingsResult> answer =
        answer(predicted(PLAIN, 4).bridgedRatings(bridged(4, 400)));
    Finding finding = finding(answer, "bridged-power-higher");
    assertEquals("/amplifier/bridged_ratings/points/0/power_w", finding.pointer());
    assertEquals(0.9691, finding.value(), 5e-5); // 10·lg(400/320)
    assertEquals(
        "Bridged into 4 ohm 400 W are published, 0.9691 dB more than the 320 W of two"
            + " single channels into 2 ohm each: not all of these ratings are for the same"
            + " supply, kind of power and number of channels driven. Check the ratings.",
        finding.inFull());
    assertEquals(Verdict.WARNING, answer.verdict());
    assertPrediction(4, 14.4, true, 400, 320, 400, answer.result().predictions().get(1));
  }

  @Test
  void lessBridgedPowerIsANoteAndCountedOn() {
    Answer<AmplifierRatingsResult> answer =
        answer(predicted(PLAIN, 4).bridgedRatings(bridged(4, 250)));
    Finding finding = finding(answer, "bridged-power-lower");
    assertEquals(-1.0721, finding.value(), 5e-5); // 10·lg(250/320)
    assertEquals(-0.5, finding.limit(), 0);
    assertTrue(finding.inFull().contains("1.072 dB less than the 320 W"), finding::inFull);
    assertPrediction(4, 14.4, true, 250, 250, 320, answer.result().predictions().get(1));
  }

  @Test
  void whatTheSingleRatingsLeaveOpenIsNoDisagreement() {
    // 1 ohm each: between 2·80 and 2·218.151 W.
    Answer<AmplifierRatingsResult> answer =
        answer(predicted(PLAIN, 4).bridgedRatings(bridged(2, 300)));
    Bridge bridge = answer.result().bridge().get(0);
    assertEquals(160, bridge.expectedLowW(), TINY);
    assertEquals(436.302, bridge.expectedHighW(), 5e-4);
    assertEquals(-1.6267, bridge.differenceDb(), 5e-5);
    assertEquals(List.of("power-does-not-double"), Answers.codes(answer));
  }

  @Test
  void bridgedRatingsForTwoLoadsSpeakForThemselves() {
    Answer<AmplifierRatingsResult> answer =
        answer(predicted(PLAIN, 8, 4).bridgedRatings(bridged(8, 200, 4, 250)));
    List<Prediction> predictions = answer.result().predictions();
    assertPrediction(8, 14.4, true, 200, 200, 200, predictions.get(1));
    assertPrediction(4, 14.4, true, 250, 250, 250, predictions.get(3));
    assertEquals(
        "/amplifier/bridged_ratings/points/1/power_w",
        finding(answer, "bridged-power-lower").pointer());
  }

  @Test
  void bridgedRatingsThatLookOddAreRemarkedOnWhereTheyStand() {
    Answer<AmplifierRatingsResult> answer =
        answer(predicted(PLAIN, 8).bridgedRatings(bridged(8, 200, 4, 205)));
    assertEquals(
        "/amplifier/bridged_ratings/points", finding(answer, "ratings-power-limited").pointer());
  }

  @Test
  void bridgedRatingsMayBeForAnotherSupplyAndAnotherKindOfPower() {
    double at12 = 320 * 144 / 207.36;
    List<Ratings.Point> points = Requests.ratings(4, 1.25 * at12).points();
    BridgedRatings other = new BridgedRatings(12.0, Basis.THD_10, points);
    Answer<AmplifierRatingsResult> answer = answer(predicted(PLAIN, 4).bridgedRatings(other));
    assertEquals(0, answer.result().bridge().get(0).differenceDb(), TINY);
    assertEquals("/amplifier/bridged_ratings/basis", finding(answer, "basis-not-clean").pointer());
    RatedRequest regulated = predicted(PLAIN, 4).bridgedRatings(other).supplyRegulated(true);
    assertEquals(
        20 * Math.log10(12 / 14.4), result(regulated).bridge().get(0).differenceDb(), TINY);
  }

  @Test
  void theKindOfPowerOfTheSingleRatingsHoldsForTheBridgeWhenItSaysNothing() {
    Ratings ratings = Requests.ratings(Basis.SQUARE_WAVE, false, false, 4, 200, 2, 320);
    Answer<AmplifierRatingsResult> answer =
        answer(predicted(ratings, 4).bridgedRatings(bridged(4, 640)));
    assertEquals(320, answer.result().bridge().get(0).publishedW(), TINY);
    assertEquals(0, answer.result().bridge().get(0).differenceDb(), TINY);
    assertEquals(1, Answers.codes(answer).stream().filter("basis-not-clean"::equals).count());
  }

  @Test
  void ratingsOfABridgeAreShownAsStatedAndHalvedForOneChannel() {
    Ratings ratings = Requests.ratings(Basis.CLEAN, true, false, 8, 200, 4, 320);
    Answer<AmplifierRatingsResult> answer = answer(predicted(ratings, 4));
    assertEquals(2 * 22.6766, answer.result().openCircuitV(), 1e-4);
    assertEquals(2 * 0.535322, answer.result().sagOhm(), 1e-6);
    assertPrediction(4, 14.4, false, 100, 100, 100, answer.result().predictions().get(0));
    assertPrediction(4, 14.4, true, 320, 320, 320, answer.result().predictions().get(1));
    assertTrue(Answers.codes(answer).contains("bridged-ratings-halved"));
  }

  @Test
  void aSingleSupplyBridgeIsNotBridgedAgain() {
    Ratings ratings = Requests.ratings(Basis.CLEAN, false, true, 4, 20, 2, 35);
    List<Prediction> predictions = result(predicted(ratings, 4, 2)).predictions();
    assertEquals(List.of(false, false), predictions.stream().map(Prediction::bridged).toList());
    Fault fault = onlyFault(predicted(ratings, 4).bridgedRatings(bridged(4, 70)));
    assertEquals("bridge-of-bridges", fault.code());
    assertEquals("/amplifier/bridged_ratings", fault.pointer());
    Ratings both = Requests.ratings(Basis.CLEAN, true, true, 4, 20, 2, 35);
    assertEquals("/amplifier/ratings/bridged", onlyFault(predicted(both, 4)).pointer());
  }

  @Test
  void bridgedRatingsNeedSingleOnesToBeHeldAgainst() {
    Ratings ratings = Requests.ratings(Basis.CLEAN, true, false, 8, 200, 4, 320);
    Fault fault = onlyFault(predicted(ratings, 4).bridgedRatings(bridged(4, 320)));
    assertEquals("not-allowed", fault.code());
    assertEquals("/amplifier/ratings/bridged", fault.pointer());
    assertEquals(
        "amplifier.ratings.bridged must be false beside bridged_ratings, which are held against single"
            + " channels.",
        fault.detail());
  }

  @Test
  void bridgedRatingsThatCannotBelongTogetherAreRefused() {
    Fault fault = onlyFault(predicted(PLAIN, 4).bridgedRatings(bridged(8, 100, 4, 300)));
    assertEquals("sag-grossly-negative", fault.code());
    assertEquals("/amplifier/bridged_ratings/points", fault.pointer());
  }

  @Test
  void ratingsForOneLoadTellNothingOfAnother() {
    Fault fault = onlyFault(predicted(Requests.ratings(4, 100, 4.2, 101), 4));
    assertEquals("loads-without-spread", fault.code());
    assertEquals("/amplifier/ratings/points", fault.pointer());
  }

  @Test
  void aSupplyOfOtherVehiclesIsAWarning() {
    RatedRequest request = predicted(PLAIN, 4).suppliesV(List.of(14.4, 27.6));
    Answer<AmplifierRatingsResult> answer = answer(request);
    Finding finding = finding(answer, "supply-of-other-vehicles");
    assertEquals("/supplies_v/1", finding.pointer());
    assertEquals(27.6, finding.value(), 0);
    assertEquals(14.4, finding.limit(), 0);
  }

  @Test
  void everyNumberOutOfItsBoundsIsNamed() {
    RatedRequest request = predicted(PLAIN, 4, 0.1).suppliesV(List.of(48.0));
    assertEquals(
        List.of("/loads_ohm/1", "/supplies_v/0"),
        Answers.faults(new AmplifierRatings(), request.build()).stream()
            .map(Fault::pointer)
            .sorted()
            .toList());
    assertEquals("/loads_ohm", onlyFault(predicted(PLAIN)).pointer());
    assertEquals("/loads_ohm", onlyFault(predicted(PLAIN).loadsOhm(null)).pointer());
  }

  @Test
  void workingsShowTheSourceAndTheComparison() {
    List<Step> steps =
        Answers.withWorkings(
                new AmplifierRatings(), predicted(PLAIN, 4).bridgedRatings(bridged(4, 300)).build())
            .workings();
    List<String> quantities = steps.stream().map(Step::quantity).toList();
    assertTrue(
        quantities.containsAll(
            List.of("open_circuit_v", "sag_ohm", "power_ratio_per_halving", "difference_db")),
        quantities::toString);
  }
}
