package org.footwell.fitting.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Step;
import org.footwell.calculation.Verdict;
import org.footwell.fitting.comparison.DriverComparisonResult.GroupLine;
import org.footwell.fitting.comparison.DriverComparisonResult.VehicleTotals;
import org.footwell.fitting.comparison.sides.ComparedChange;
import org.footwell.fitting.comparison.sides.ComparedPosition.Band;
import org.footwell.fitting.comparison.sides.ComparedPosition.MountedAt;
import org.footwell.fitting.comparison.sides.ComparedPosition.Zone;
import org.footwell.fitting.comparison.sides.ComparedSide;
import org.footwell.fitting.comparison.sides.LevelLimit;
import org.footwell.fitting.comparison.sides.ReachLimit;
import org.footwell.parts.DriverBuilder;
import org.junit.jupiter.api.Test;

class DriverComparisonTest {

  /** The front doors of the method page with what comes in besides. */
  private static ComparisonDraft handExample() {
    return ComparisonDraft.of(new PositionDraft())
        .with("four-channel amplifier", MountedAt.BOOT, 3100.0, "249.00")
        .with("cables and fuses", MountedAt.CABIN, 1400.0, "58.40");
  }

  @Test
  void theHandExampleOfTheMethodPageBefore() {
    ComparedSide before = handExample().line(0).before();
    assertEquals(87.985, before.oneWattLevelDbSpl(), 5e-4);
    assertEquals(91, before.twoPointEightThreeVoltLevelDbSpl(), 1e-12);
    assertEquals(101.964, before.thermalLevelDbSpl(), 5e-4);
    assertEquals(93.102, before.displacementLevelDbSpl(), 5e-4);
    assertEquals(19.8025, before.amplifierPowerW(), 1e-9);
    assertEquals(100.952, before.amplifierLevelDbSpl(), 5e-4);
    assertEquals(93.102, before.largestLevelDbSpl(), 5e-4);
    assertEquals(LevelLimit.DISPLACEMENT, before.limitedBy());
    assertEquals(125.7, before.displacementLimitedBelowHz(), 0.05);
    assertEquals(75, before.lowestUsefulHz(), 1e-12);
    assertEquals(ReachLimit.RESONANCE, before.lowestUsefulBy());
    assertEquals(264, before.coneAreaCm2(), 1e-9);
    assertEquals(52.8, before.displacementCm3(), 1e-9);
    assertEquals(3.010, before.peakOverContinuousDb(), 5e-4);
    assertEquals(700, before.massG(), 1e-9);
    assertNull(before.price());
  }

  @Test
  void theHandExampleOfTheMethodPageAfterAndItsChange() {
    ComparedSide after = handExample().line(0).after();
    assertEquals(107.031, after.thermalLevelDbSpl(), 5e-4);
    assertEquals(101.383, after.displacementLevelDbSpl(), 5e-4);
    assertEquals(106.751, after.amplifierLevelDbSpl(), 5e-4);
    assertEquals(new BigDecimal("129.90"), after.price());
    ComparedChange change = handExample().line(0).change();
    assertEquals(8.282, change.largestLevelDb(), 5e-4);
    assertEquals(0.015, change.sensitivityAtEqualPowerDb(), 5e-4);
    assertEquals(0.015, change.sensitivityAtEqualVoltageDb(), 5e-4);
    assertEquals(5.051, change.continuousPowerDb(), 5e-4);
    assertEquals(6.812, change.peakPowerDb(), 5e-4);
    assertEquals(0.371, change.lowerReachOctaves(), 5e-4);
    assertEquals(1800, change.massG(), 1e-9);
    assertEquals(10, change.coneAreaCm2(), 1e-9);
    assertEquals(84.2, change.displacementCm3(), 1e-9);
    assertEquals(new BigDecimal("15.69"), change.pricePerDb());
    assertFalse(change.limitsOfFactoryUnknown());
  }

  @Test
  void theHandExampleOfTheMethodPageTotals() {
    VehicleTotals totals = handExample().result().totals();
    assertEquals(6300, totals.massChangeG(), 1e-9);
    assertEquals(1800, totals.doorMassChangeG(), 1e-9);
    assertEquals(new BigDecimal("437.30"), totals.price());
    assertEquals(8.282, totals.levelChangeDb(), 5e-4);
    assertEquals(new BigDecimal("52.80"), totals.pricePerDb());
    GroupLine group = handExample().result().groups().get(0);
    assertEquals(96.112, group.largestLevelBeforeDbSpl(), 5e-4);
    assertEquals(104.394, group.largestLevelAfterDbSpl(), 5e-4);
    assertEquals(
        List.of("heavy-part", "sensitivities-unlike", "travel-limited", "sensitivity-not-per-watt"),
        handExample().codes());
  }

  @Test
  void halfTheImpedanceIsLouderByVoltageThoughNotByPower() {
    PositionDraft position = new PositionDraft();
    position.factory.sensitivity(ComparedParts.perWatt(90));
    position.replacement.sensitivity(ComparedParts.perWatt(88)).ratedOhm(2.0);
    ComparisonDraft draft = ComparisonDraft.of(position);
    ComparedChange change = draft.line(0).change();
    assertEquals(-2, change.sensitivityAtEqualPowerDb(), 1e-9);
    assertEquals(1.010, change.sensitivityAtEqualVoltageDb(), 5e-4);
    assertEquals(1.585, change.powerRatioForFactoryLevel(), 5e-4);
    assertTrue(draft.said("more-power-needed").contains("1.585 times the power"));
    assertFalse(draft.codes().contains("quieter-at-same-setting"));
  }

  @Test
  void twoVoltBasisAtFourOhmFlattersByThreeDecibels() {
    PositionDraft position = new PositionDraft();
    position.factory.sensitivity(ComparedParts.perWatt(90));
    position.replacement.sensitivity(ComparedParts.atVoltage(91));
    ComparisonDraft draft = ComparisonDraft.of(position);
    assertEquals(-2.015, draft.line(0).change().sensitivityAtEqualPowerDb(), 5e-4);
    assertTrue(draft.said("sensitivity-not-per-watt").contains("2.002 W into 4 ohm"));
    assertTrue(draft.said("quieter-at-same-setting").contains("2.015 dB quieter"));
    assertTrue(draft.codes().contains("sensitivities-unlike"));
  }

  @Test
  void atEightOhmTheTwoBasesAreAlikeAndNotWorthAWord() {
    PositionDraft position = new PositionDraft();
    position.factory.ratedOhm(8.0);
    position.replacement.ratedOhm(8.0);
    List<String> codes = ComparisonDraft.of(position).codes();
    assertFalse(codes.contains("sensitivities-unlike"));
    assertFalse(codes.contains("sensitivity-not-per-watt"));
  }

  @Test
  void anAmplifierThatStaysKeepsItsVoltageIntoTheNewLoad() {
    PositionDraft position = new PositionDraft();
    position.place.amplifierBefore(PositionDraft.watts(20).build()).amplifierAfter(null);
    position.replacement.ratedOhm(2.0);
    ComparisonDraft draft = ComparisonDraft.of(position);
    assertEquals(20, draft.line(0).before().amplifierPowerW(), 1e-9);
    assertEquals(40, draft.line(0).after().amplifierPowerW(), 1e-9);
    assertTrue(draft.said("replacement-loads-more").contains("2 times the current"));
  }

  @Test
  void anAmplifierFarAboveWhatTheNewPartBearsIsFound() {
    PositionDraft position = new PositionDraft();
    position.place.amplifierBefore(PositionDraft.watts(100).build()).amplifierAfter(null);
    position.replacement.continuousPowerW(49.0);
    ComparisonDraft draft = ComparisonDraft.of(position);
    String said = draft.said("amplifier-far-above-rating");
    assertTrue(said.contains("the amplifier that stays has 100 W"), said);
    // √(49 W·4 ohm)
    assertTrue(said.contains("Hold the output to 14 V"), said);
    assertEquals(Verdict.WARNING, draft.line(0).verdict());
    position.replacement.continuousPowerW(50.0);
    assertFalse(draft.codes().contains("amplifier-far-above-rating"));
    position.place.amplifierAfter(PositionDraft.watts(400).loadOhm(4.0).build());
    assertTrue(draft.said("amplifier-far-above-rating").contains("the amplifier has 400 W"));
  }

  @Test
  void aPowerIsForTheLoadItIsStatedFor() {
    PositionDraft position = new PositionDraft();
    position.place.amplifierAfter(PositionDraft.watts(150).loadOhm(2.0).build());
    assertEquals(
        75, ComparisonDraft.of(position).line(0).after().amplifierPowerW(), 1e-9, "300 V² into 4");
    position.place.amplifierAfter(PositionDraft.watts(150).build());
    assertEquals(150, ComparisonDraft.of(position).line(0).after().amplifierPowerW(), 1e-9);
  }

  @Test
  void aKnownSmallestLoadDecidesInsteadOfTheFactoryPart() {
    PositionDraft position = new PositionDraft();
    position.place.amplifierAfter(null);
    position.replacement.ratedOhm(2.0);
    position.place.amplifierBefore(PositionDraft.volts(8.9).minimumOhm(2.0).build());
    assertFalse(ComparisonDraft.of(position).codes().contains("replacement-loads-more"));
    position.place.amplifierBefore(PositionDraft.volts(8.9).minimumOhm(4.0).build());
    assertEquals("replacement-below-minimum-load", ComparisonDraft.of(position).codes().get(0));
    assertEquals(Verdict.STOP, ComparisonDraft.of(position).line(0).verdict());
    position.place.amplifierAfter(PositionDraft.volts(17.0).minimumOhm(4.0).build());
    assertEquals("replacement-below-minimum-load", ComparisonDraft.of(position).codes().get(0));
  }

  @Test
  void aLowerLargestLevelIsSaidWithWhatHoldsIt() {
    PositionDraft position = new PositionDraft();
    position.replacement.xmaxMm(1.0);
    ComparisonDraft draft = ComparisonDraft.of(position);
    // 20·lg(137·1/(132·2)) = −5.698
    assertEquals(-5.698, draft.line(0).change().largestLevelDb(), 5e-4);
    assertTrue(draft.said("largest-level-lower").contains("by 5.698 dB"));
    assertTrue(draft.said("largest-level-lower").contains("the travel of its cone"));
    assertNull(draft.line(0).change().pricePerDb());
    assertNull(draft.result().totals().pricePerDb());
  }

  @Test
  void whatIsUnknownOfTheFactoryPartMakesTheChangeALowerBound() {
    PositionDraft position = new PositionDraft();
    position.factory.xmaxMm(null);
    ComparisonDraft draft = ComparisonDraft.of(position);
    ComparedChange change = draft.line(0).change();
    // From the amplifier's 100.952 to the travel's 101.383.
    assertEquals(0.431, change.largestLevelDb(), 5e-4);
    assertTrue(change.limitsOfFactoryUnknown());
    assertTrue(draft.said("change-at-least").contains("the travel of its cone"));
    // A price for each dB of a gain that may be much larger would mislead.
    assertTrue(draft.said("change-at-least").contains("has no price for each dB"));
    assertNull(change.pricePerDb());
    assertNull(draft.result().groups().get(0).pricePerDb());
    assertNull(draft.result().totals().pricePerDb());
    assertEquals(0.431, draft.result().totals().levelChangeDb(), 5e-4);
    assertTrue(draft.said("data-not-given").contains("factory.xmax_mm"));
  }

  @Test
  void whatIsUnknownOfTheReplacementOnlyCannotBeCompared() {
    PositionDraft position = new PositionDraft();
    position.replacement.xmaxMm(null);
    ComparisonDraft draft = ComparisonDraft.of(position);
    assertNull(draft.line(0).change().largestLevelDb());
    assertNull(draft.line(0).change().lowerReachOctaves());
    assertNull(draft.line(0).change().limitsOfFactoryUnknown());
    assertNull(draft.result().groups().get(0).levelChangeDb());
    assertNull(draft.result().totals().levelChangeDb());
    assertNull(draft.result().totals().displacementAfterCm3());
    assertTrue(draft.said("data-not-given").contains("replacement.xmax_mm"));
  }

  @Test
  void nothingButTheImpedancesStillGivesAnAnswer() {
    PositionDraft position = new PositionDraft();
    position.place.amplifierBefore(null).amplifierAfter(null);
    position.factory = DriverBuilder.builder().ratedOhm(4.0);
    position.replacement = DriverBuilder.builder().ratedOhm(4.0);
    ComparisonDraft draft = ComparisonDraft.of(position);
    assertEquals(List.of("data-not-given"), draft.codes());
    assertNull(draft.line(0).after().limitedBy());
    assertNull(draft.result().totals().price());
    assertTrue(
        draft.said("data-not-given").endsWith("left out, of the totals too."),
        draft.said("data-not-given"));
  }

  @Test
  void aStatedResponseCountsInsteadOfTheResonanceOnlyWhenBothHaveOne() {
    PositionDraft position = new PositionDraft();
    position.place.replacementF3Hz(50.0);
    assertEquals(58, ComparisonDraft.of(position).line(0).after().lowestUsefulHz(), 1e-12);
    position.place.factoryF3Hz(100.0);
    assertEquals(1, ComparisonDraft.of(position).line(0).change().lowerReachOctaves(), 1e-12);
    assertEquals(
        ReachLimit.RESPONSE, ComparisonDraft.of(position).line(0).after().lowestUsefulBy());
  }

  @Test
  void aResponseAndAResonanceAreNotCompared() {
    PositionDraft position = new PositionDraft();
    position.place.replacementF3Hz(50.0);
    position.replacement.fsHz(null);
    ComparisonDraft draft = ComparisonDraft.of(position);
    assertNull(draft.line(0).change().lowerReachOctaves());
    assertTrue(draft.codes().contains("reach-unlike"));
  }

  @Test
  void atALevelThatAsksForTooMuchTravelTheReachIsHeldByIt() {
    PositionDraft position = new PositionDraft();
    position.place.reachLevelDbSpl(100.0);
    ComparedSide before = ComparisonDraft.of(position).line(0).before();
    // 66.919 Hz at 90 dB, and 10 dB more is a frequency 10^(1/4) higher.
    assertEquals(66.919 * Math.pow(10, 0.25), before.lowestUsefulHz(), 0.002);
    assertEquals(ReachLimit.DISPLACEMENT, before.lowestUsefulBy());
  }

  @Test
  void travelIsJudgedAtAFrequencyOfTheBandUnlessGiven() {
    PositionDraft position = new PositionDraft();
    for (Band band : Band.values()) {
      position.place.band(band);
      double expected =
          switch (band) {
            case SUBWOOFER -> 40;
            case WOOFER, FULL_RANGE -> 80;
            case MIDRANGE -> 400;
            case TWEETER -> 3000;
          };
      assertEquals(expected, ComparisonDraft.of(position).line(0).displacementHz(), 1e-12);
    }
    position.place.displacementHz(160.0);
    double atTwice = ComparisonDraft.of(position).line(0).after().displacementLevelDbSpl();
    assertEquals(101.3834 + 12.0412, atTwice, 1e-3);
  }

  @Test
  void pastTheModelOfAPistonItSaysSo() {
    PositionDraft position = new PositionDraft();
    position.place.displacementHz(1000.0);
    // ka is 1 for 132 cm² at 343.2/(2·π·0.064820 m) = 842.7 Hz
    assertTrue(
        ComparisonDraft.of(position).answer().findings().stream()
            .anyMatch(finding -> finding.inFull().contains("the factory part is no longer small")));
    position.place.displacementHz(800.0);
    assertFalse(ComparisonDraft.of(position).codes().contains("piston-model-limit"));
  }

  @Test
  void whereNothingWasAllOfTheMassComesInAndNothingIsCompared() {
    PositionDraft added = PositionDraft.named("subwoofer");
    added.place.band(Band.SUBWOOFER).zone(Zone.REAR).at(MountedAt.BOOT).driverCount(1);
    added.factory = null;
    added.place.amplifierBefore(null);
    ComparisonDraft draft = ComparisonDraft.of(new PositionDraft(), added);
    ComparedChange change = draft.line(1).change();
    assertEquals(1250, change.massG(), 1e-9);
    assertEquals(137, change.coneAreaCm2(), 1e-9);
    assertNull(change.largestLevelDb());
    DriverComparisonResult result = draft.result();
    assertNull(result.groups().get(1).levelChangeDb());
    assertEquals(0, result.groups().get(1).coneAreaBeforeCm2(), 1e-12);
    assertEquals(8.282, result.totals().levelChangeDb(), 5e-4);
    // The doors gain what they did, but the price of the subwoofer is in the total now.
    assertEquals(new BigDecimal("194.85"), result.totals().price());
    assertNull(result.totals().pricePerDb());
    assertTrue(draft.said("price-per-db-left-out").contains("subwoofer is new"));
    assertEquals(new BigDecimal("15.69"), result.groups().get(0).pricePerDb());
    assertEquals(3050, result.totals().massChangeG(), 1e-9);
    assertEquals(264, result.totals().coneAreaBeforeCm2(), 1e-9);
    assertEquals(411, result.totals().coneAreaAfterCm2(), 1e-9);
    assertFalse(draft.codes().contains("data-not-given"));
  }

  @Test
  void positionsOfOneZoneAndBandAddTheirPowers() {
    PositionDraft left = PositionDraft.named("left");
    left.place.driverCount(1);
    PositionDraft right = PositionDraft.named("right");
    right.place.driverCount(1);
    GroupLine apart = ComparisonDraft.of(left, right).result().groups().get(0);
    GroupLine together = ComparisonDraft.of(new PositionDraft()).result().groups().get(0);
    assertEquals(together.largestLevelBeforeDbSpl(), apart.largestLevelBeforeDbSpl(), 1e-9);
    assertEquals(together.largestLevelAfterDbSpl(), apart.largestLevelAfterDbSpl(), 1e-9);
    assertEquals(together.price(), apart.price());
    assertEquals(together.pricePerDb(), apart.pricePerDb());
  }

  @Test
  void theVehicleGainsWhatItsLeastGroupGains() {
    PositionDraft rear = PositionDraft.named("rear");
    rear.place.zone(Zone.REAR);
    rear.replacement.xmaxMm(2.5);
    // 20·lg(137·2.5/(132·2)) = 2.261
    VehicleTotals totals = ComparisonDraft.of(new PositionDraft(), rear).result().totals();
    assertEquals(2.261, totals.levelChangeDb(), 5e-4);
    assertEquals(new BigDecimal("259.80"), totals.price());
    assertEquals(new BigDecimal("114.90"), totals.pricePerDb());
  }

  @Test
  void peakBelowContinuousPowerIsSaid() {
    PositionDraft position = new PositionDraft();
    position.factory.peakPowerW(20.0);
    assertTrue(
        ComparisonDraft.of(position).said("peak-below-continuous").contains("the factory part"));
  }

  @Test
  void everythingHeavyGetsTheCautionAboutRestraint() {
    PositionDraft position = new PositionDraft();
    position.replacement.massG(2000.0);
    ComparisonDraft draft = ComparisonDraft.of(position).with("box", MountedAt.BOOT, 1999.0, "0");
    assertTrue(draft.said("heavy-part").startsWith("The new part of front doors weighs 2 kg"));
    draft.comparison.heavyG(1500.0);
    assertEquals(2, draft.codes().stream().filter("heavy-part"::equals).count());
    assertTrue(draft.result().additions().get(0).needsRestraint());
  }

  @Test
  void doorsVehicleAndPayloadAreWatched() {
    ComparisonDraft draft =
        ComparisonDraft.of(new PositionDraft())
            .with("damping sheets", MountedAt.DOOR, 900.0, "45")
            .with("box", MountedAt.BOOT, 9000.0, "120");
    assertTrue(draft.said("doors-heavier").contains("2.7 kg heavier"));
    assertTrue(draft.said("vehicle-heavier").contains("11.7 kg"));
    draft.comparison.payloadLeftG(11_000.0);
    assertEquals("payload-exceeded", draft.codes().get(0));
    assertFalse(draft.codes().contains("vehicle-heavier"));
    draft.comparison.payloadLeftG(11_700.0);
    assertTrue(draft.codes().contains("vehicle-heavier"));
  }

  @Test
  void anUnknownMassOrPriceOfAnAdditionLeavesOnlyItsTotalOut() {
    ComparisonDraft draft =
        ComparisonDraft.of(new PositionDraft()).with("box", MountedAt.BOOT, null, "120");
    assertNull(draft.result().totals().massChangeG());
    assertEquals(1800, draft.result().totals().doorMassChangeG(), 1e-9);
    assertEquals(new BigDecimal("249.90"), draft.result().totals().price());
    assertTrue(draft.said("data-not-given").startsWith("box: not given: mass_g."));
  }

  @Test
  void workingsNameEveryStepWithItsSource() {
    List<Step> steps =
        Answers.withWorkings(new DriverComparison(), handExample().request()).workings();
    assertTrue(steps.stream().anyMatch(step -> step.quantity().equals("thermal_level_db_spl")));
    assertTrue(steps.stream().noneMatch(step -> step.source().isBlank()));
  }
}
