package org.footwell.acoustic.crossover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.crossover.CrossoverPlanRequest.ProgrammeKind;
import org.footwell.acoustic.crossover.CrossoverPlanRequest.Protection;
import org.footwell.acoustic.crossover.CrossoverPlanResult.Choice;
import org.footwell.acoustic.crossover.CrossoverPlanResult.HighLimit;
import org.footwell.acoustic.crossover.CrossoverPlanResult.LowLimit;
import org.footwell.acoustic.crossover.CrossoverPlanResult.PlannedCrossover;
import org.footwell.acoustic.crossover.CrossoverPlanResult.PlannedSlope;
import org.footwell.acoustic.crossover.CrossoverPlanResult.ProtectionCapacitor;
import org.footwell.acoustic.crossover.CrossoverPlanResult.WayShare;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Verdict;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;
import org.footwell.parts.WayRole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CrossoverPlanTest {

  @Test
  void theHandExampleOfTheMethodPage() {
    TwoWays draft = new TwoWays();
    draft.plan.protection(new Protection(null, null));
    CrossoverPlanResult result = draft.result();
    PlannedCrossover crossover = result.crossovers().get(0);
    assertEquals(1800, crossover.lowestHz(), 1e-9);
    assertEquals(LowReason.RESONANCE, crossover.lowestReason());
    assertEquals(2738.34, crossover.highestHz(), 0.01);
    assertEquals(HighReason.BEAMING, crossover.highestReason());
    assertEquals(2220.1, crossover.frequencyHz(), 0.1);
    assertEquals(Choice.MIDDLE, crossover.frequencyReason());
    assertEquals(2, crossover.order());
    assertEquals(1.6215, crossover.lowerKa(), 1e-4);
    WayShare tweeter = result.ways().get(1);
    assertEquals(1441.17, tweeter.fullLevelFromHz(), 0.01);
    assertEquals(10, tweeter.sinePowerW(), 1e-9);
    assertEquals(6.3246, tweeter.sineV(), 1e-4);
    assertEquals(8.9443, tweeter.peakV(), 1e-4);
    // 31.8 % of pink noise lies above the crossover; the skirts almost make up for each other.
    assertEquals(0.400, tweeter.programmePowerW(), 0.002);
    ProtectionCapacitor capacitor = result.protection();
    assertEquals(35.844, capacitor.wantedUf(), 1e-3);
    assertEquals(33, capacitor.capacitorUf(), 0);
    assertEquals(1205.72, capacitor.cornerHz(), 0.01);
    assertEquals(-1.1225, capacitor.levelDb(), 1e-3);
    assertEquals(28.505, capacitor.phaseDeg(), 2e-3);
  }

  @Test
  void farAboveResonanceTheSecondOrderNeedsTheFrequencyWhereTheLevelTakesAllOfXmax() {
    TwoWays draft = new TwoWays();
    draft.high().fsHz(10.0);
    CrossoverPlanResult result = draft.result();
    List<PlannedSlope> slopes = result.crossovers().get(0).slopes();
    assertEquals(1441.17, slopes.get(0).lowestHz(), 0.2);
    // The fourth root of a half.
    assertEquals(1441.17 * 0.840896, slopes.get(1).lowestHz(), 0.1);
    assertEquals(LowReason.DISPLACEMENT, result.crossovers().get(0).lowestReason());
    assertEquals(1441.17 * 0.840896, result.crossovers().get(0).lowestHz(), 0.1);
  }

  @Test
  void theLowestOrderThatHoldsTheDisplacementIsProposed() {
    TwoWays draft = new TwoWays();
    draft.plan.orders(List.of(4, 1, 2)).wantedLevelDbSpl(106.0);
    PlannedCrossover crossover = draft.result().crossovers().get(0);
    assertEquals(List.of(1, 2, 4), crossover.slopes().stream().map(PlannedSlope::order).toList());
    assertEquals(
        List.of(false, true, true),
        crossover.slopes().stream().map(PlannedSlope::withinXmax).toList());
    assertEquals(2, crossover.order());
    assertEquals(12.0412, crossover.slopeDb(), 1e-4);
  }

  @Test
  void atTheLowestCornerTheDisplacementIsXmax() {
    TwoWays draft = new TwoWays();
    draft.plan.orders(List.of(4));
    draft.high().resonanceMultiple(0.5);
    draft.low().upperLimitHz(draft.result().crossovers().get(0).slopes().get(0).lowestHz());
    PlannedCrossover crossover = draft.result().crossovers().get(0);
    assertEquals(crossover.highestHz(), crossover.frequencyHz(), 1e-6);
    assertEquals(0.3, crossover.slopes().get(0).displacementMm(), 1e-6);
    assertTrue(crossover.slopes().get(0).withinXmax());
  }

  @Test
  void aDriverThatNeedsNoFilterSetsNoLimitByDisplacement() {
    TwoWays draft = new TwoWays();
    draft.plan.wantedLevelDbSpl(75.0);
    PlannedCrossover crossover = draft.result().crossovers().get(0);
    assertNull(crossover.slopes().get(0).lowestHz());
    assertTrue(crossover.slopes().get(0).withinXmax());
    assertFalse(crossover.lowLimits().stream().anyMatch(l -> l.reason() == LowReason.DISPLACEMENT));
  }

  @Test
  void aClosedBoxRaisesResonanceAndQ() {
    TwoWays free = new TwoWays();
    free.high().fsHz(1000.0).qts(1.0);
    TwoWays boxed = new TwoWays();
    boxed.high().fsHz(500.0).fcHz(1000.0).qts(0.5);
    assertEquals(
        free.result().crossovers().get(0).slopes().get(0).lowestHz(),
        boxed.result().crossovers().get(0).slopes().get(0).lowestHz(),
        1e-6);
    assertEquals(2000, boxed.result().crossovers().get(0).lowestHz(), 1e-9);
  }

  @Test
  void everyReasonStandsInTheListsFromLowToHigh() {
    TwoWays draft = new TwoWays();
    draft.high().lowerLimitHz(2000.0);
    draft.low().upperLimitHz(4000.0).spacingToNextMm(114.4);
    PlannedCrossover crossover = draft.result().crossovers().get(0);
    List<LowReason> low = crossover.lowLimits().stream().map(LowLimit::reason).toList();
    assertEquals(
        List.of(
            LowReason.PROCESSOR, LowReason.DISPLACEMENT, LowReason.RESONANCE, LowReason.DATA_SHEET),
        low);
    List<HighReason> high = crossover.highLimits().stream().map(HighLimit::reason).toList();
    assertEquals(
        List.of(
            HighReason.BEAMING, HighReason.SPACING, HighReason.DATA_SHEET, HighReason.PROCESSOR),
        high);
    assertEquals(3000, crossover.highLimits().get(1).frequencyHz(), 1e-9);
  }

  @Test
  void aSubwooferIsKeptBelowTheFrequencyAtWhichTheEarFindsIt() {
    TwoWays draft = new TwoWays();
    draft.ways.add(0, TwoWays.subwoofer());
    draft.low().fsHz(30.0);
    PlannedCrossover crossover = draft.result().crossovers().get(0);
    assertEquals(120, crossover.highestHz(), 0);
    assertEquals(HighReason.LOCALISATION, crossover.highestReason());
    // The midrange's resonance is just as high: the only frequency left.
    assertEquals(120, crossover.frequencyHz(), 1e-9);
    CrossoverPlanResult result = draft.result();
    assertEquals(120, result.lowestCrossoverHz(), 1e-9);
    assertEquals(result.crossovers().get(1).frequencyHz(), result.highestCrossoverHz());
    assertEquals(result.crossovers().get(1).order(), result.highestCrossoverOrder());
    assertTrue(draft.codes().contains("crossover-room-small"));
  }

  @Test
  void inAWideWindowTheProposalIsAnOctaveAboveItsLowEnd() {
    TwoWays draft = new TwoWays();
    draft.plan.beamingKa(6.0);
    PlannedCrossover crossover = draft.result().crossovers().get(0);
    assertEquals(3600, crossover.frequencyHz(), 1e-9);
    assertEquals(Choice.OCTAVE_ABOVE_LOWEST, crossover.frequencyReason());
  }

  @Test
  void withoutAWindowTheDriverIsProtectedAtACostInSound() {
    TwoWays draft = new TwoWays();
    draft.high().fsHz(1500.0);
    Answer<CrossoverPlanResult> answer = draft.answer();
    PlannedCrossover crossover = answer.result().crossovers().get(0);
    assertEquals(3000, crossover.frequencyHz(), 1e-9);
    assertEquals(Choice.LOWEST, crossover.frequencyReason());
    assertTrue(crossover.windowOctaves() < 0);
    Finding finding = answer.findings().get(0);
    assertEquals("crossover-compromise", finding.code());
    assertTrue(
        finding
            .inFull()
            .endsWith(
                "Better is an upper driver with a lower resonance, a smaller lower driver, a way"
                    + " between, or a higher beaming_ka."),
        finding.inFull());
    assertTrue(crossover.slopes().get(0).withinXmax());
    assertEquals(4, crossover.order(), "the steepest, though the second order holds");
  }

  @ParameterizedTest
  @EnumSource(LowReason.class)
  void everyRemedyReadsAsASentenceWithNothingSaidTwice(LowReason low) {
    for (HighReason high : HighReason.values()) {
      String sentence = CrossoverRules.remedies(low, high).toString();
      List<String> parts = List.of(sentence.split(", (or )?"));
      assertEquals(parts.stream().distinct().toList(), parts, sentence);
      assertTrue(parts.size() > 1, sentence);
      assertTrue(parts.stream().allMatch(part -> part.matches("(an?|the) .+")), sentence);
      assertTrue(sentence.contains(", or " + parts.get(parts.size() - 1)), sentence);
      assertFalse(sentence.matches(".*\\b(\\w+) \\1\\b.*"), sentence);
    }
  }

  @Test
  void heatAtBothEndsAsksForALowerLevelOnce() {
    assertEquals(
        "a lower wanted level, an upper driver with more sensitivity or power, or a lower driver"
            + " with more sensitivity or power",
        CrossoverRules.remedies(LowReason.HEAT, HighReason.HEAT).toString());
  }

  @Test
  void whereEvenACompromiseIsImpossibleThereIsNoProposal() {
    TwoWays draft = new TwoWays();
    draft.high().fsHz(1500.0);
    draft.low().upperLimitHz(2800.0);
    draft.plan.protection(new Protection(null, null));
    Answer<CrossoverPlanResult> answer = draft.answer();
    assertEquals(Verdict.STOP, answer.verdict());
    assertEquals("no-crossover-window", answer.findings().get(0).code());
    assertNull(answer.result().crossovers().get(0).frequencyHz());
    assertNull(answer.result().crossovers().get(0).order());
    assertNull(answer.result().ways().get(0).shareDb());
    assertNull(answer.result().protection());
    assertNotNull(answer.result().ways().get(0).sinePowerW());
  }

  @Test
  void theFiguresThatExcludeEachOtherAreNamedAndNotTheBeamingBelowThem() {
    TwoWays draft = new TwoWays();
    draft.low().sdCm2(130.0).upperLimitHz(2000.0);
    draft.high().lowerLimitHz(5000.0);
    Answer<CrossoverPlanResult> answer = draft.answer();
    assertEquals(HighReason.BEAMING, answer.result().crossovers().get(0).highestReason());
    Finding finding = answer.findings().get(0);
    assertEquals("no-crossover-window", finding.code());
    assertEquals(5000, finding.value());
    assertEquals(2000, finding.limit());
    assertTrue(finding.inFull().contains("lower_limit_hz) asks for at least 5000 Hz"));
    assertTrue(finding.inFull().contains("upper_limit_hz) asks for 2000 Hz at most"));
    assertFalse(finding.inFull().contains("beaming"), finding.inFull());
  }

  @Test
  void waysInReversedOrderStopThePlan() {
    TwoWays byCone = new TwoWays();
    Collections.reverse(byCone.ways);
    assertTrue(byCone.codes().contains("ways-reversed"), byCone.codes()::toString);
    assertEquals(Verdict.STOP, byCone.answer().verdict());

    TwoWays byRole = new TwoWays();
    byRole.low().role(WayRole.TWEETER);
    byRole.high().role(WayRole.MIDRANGE);
    assertTrue(byRole.codes().contains("ways-reversed"), byRole.codes()::toString);

    TwoWays byResonance = new TwoWays();
    byResonance.low().sdCm2(5.0);
    byResonance.high().fsHz(119.0);
    assertTrue(byResonance.codes().contains("ways-reversed"), byResonance.codes()::toString);
  }

  @Test
  void withNothingKnownOfTheUpperDriverNoFrequencyIsGuessed() {
    TwoWays draft = new TwoWays();
    draft.high().fsHz(null).xmaxMm(null);
    Answer<CrossoverPlanResult> answer = draft.answer();
    PlannedCrossover crossover = answer.result().crossovers().get(0);
    assertEquals("low-end-undecided", answer.findings().get(0).code());
    assertNull(crossover.lowestHz());
    assertNull(crossover.frequencyHz());
    assertNull(crossover.slopes());
    draft.high().lowerLimitHz(2500.0);
    PlannedCrossover stated = draft.result().crossovers().get(0);
    assertEquals(2500, stated.lowestHz(), 0);
    assertEquals(4, stated.order(), "the steepest where displacement is not known");
  }

  @Test
  void whatIsMissingIsSaid() {
    TwoWays draft = new TwoWays();
    draft.high().qts(null).sensitivity(null).continuousPowerW(null);
    draft.low().xmaxMm(null).fsHz(null);
    Answer<CrossoverPlanResult> answer = draft.answer();
    assertEquals(
        List.of(
            "/ways/1/driver/qts",
            "/ways/1/driver/sensitivity",
            "/ways/1/driver/continuous_power_w"),
        answer.findings().stream().map(Finding::pointer).toList());
    assertNull(answer.result().ways().get(0).fullLevelFromHz());
    assertNull(answer.result().ways().get(1).sinePowerW());
    assertNull(answer.result().ways().get(1).programmePowerW());
    assertNotNull(answer.result().ways().get(1).shareDb());
  }

  @Test
  void heatSetsTheLowEndWhereTheTweetersPartOfTheProgrammeGetsTooMuch() {
    TwoWays draft = new TwoWays();
    draft.plan.crestFactorDb(3.0103);
    draft.high().continuousPowerW(3.0);
    // Crest of a sine: 10 W for the whole. 3 W are the top 30 % of the logarithm of pink noise.
    PlannedCrossover crossover = draft.result().crossovers().get(0);
    LowLimit last = crossover.lowLimits().get(crossover.lowLimits().size() - 1);
    assertEquals(LowReason.HEAT, last.reason());
    assertEquals(20 * Math.pow(1000, 0.7), last.frequencyHz(), 0.01);
    assertEquals(2517.85, last.frequencyHz(), 0.01);
    draft.low().continuousPowerW(6.0);
    HighLimit first = draft.result().crossovers().get(0).highLimits().get(0);
    assertEquals(HighReason.HEAT, first.reason());
    assertEquals(1261.91, first.frequencyHz(), 0.01);
    assertEquals("no-crossover-window", draft.codes().get(0));
  }

  @Test
  void theSharesOfButterworthFiltersOfOddOrderAddUpToTheWhole() {
    TwoWays draft = new TwoWays();
    draft.plan.orders(List.of(3)).programme(ProgrammeKind.IEC_60268_1);
    CrossoverPlanResult result = draft.result();
    double sum = result.ways().stream().mapToDouble(way -> Math.pow(10, way.shareDb() / 10)).sum();
    assertEquals(1, sum, 1e-9);
  }

  @Test
  void theAmplifiersAverageIsItsSinePowerLessTheCrestBeyondThatOfASine() {
    TwoWays draft = new TwoWays();
    draft.plan.orders(List.of(1)).totalPowerW(100.0).crestFactorDb(13.0103);
    CrossoverPlanResult result = draft.result();
    double sum = result.ways().stream().mapToDouble(WayShare::amplifierShareW).sum();
    assertEquals(10, sum, 1e-4);
    assertFalse(draft.codes().contains("amplifier-share-too-high"));
    draft.plan.totalPowerW(2000.0);
    assertTrue(draft.codes().contains("amplifier-share-too-high"));
  }

  @Test
  void aShallowSlopeLetsMorePowerThroughThanTheLimitByHeatCountsWith() {
    TwoWays draft = new TwoWays();
    draft
        .plan
        .orders(List.of(1))
        .programme(ProgrammeKind.IEC_60268_1)
        .crestFactorDb(3.0103)
        .beamingKa(1.0);
    draft.high().xmaxMm(10.0).continuousPowerW(1.0);
    Answer<CrossoverPlanResult> answer = draft.answer();
    assertEquals(LowReason.HEAT, answer.result().crossovers().get(0).lowestReason());
    assertEquals(Choice.LOWEST, answer.result().crossovers().get(0).frequencyReason());
    assertTrue(answer.result().ways().get(1).programmeMarginDb() < 0);
    assertTrue(Answers.codes(answer).contains("programme-power-too-high"));
  }

  @Test
  void theSensitivityAtAVoltageCountsWithTheRatedImpedance() {
    TwoWays draft = new TwoWays();
    draft.high().sensitivity(new Sensitivity(93.0, Basis.TWO_POINT_EIGHT_THREE_VOLT)).reOhm(3.2);
    WayShare way = draft.result().ways().get(1);
    // 7 dB above 2.83 V.
    assertEquals(2.83 * Math.pow(10, 7 / 20.0), way.sineV(), 1e-9);
    assertEquals(way.peakV() / 3.2, way.peakA(), 1e-12);
    assertEquals(way.sineV() * way.sineV() / 4, way.sinePowerW(), 1e-9);
  }

  @Test
  void twiceTheDistanceWantsSixDecibelsMore() {
    TwoWays draft = new TwoWays();
    draft.plan.distanceM(2.0);
    assertEquals(40, draft.result().ways().get(0).sinePowerW(), 1e-9);
    assertEquals(2038.12, draft.result().ways().get(1).fullLevelFromHz(), 0.02);
  }

  @Test
  void linkwitzRileyOfOrderTwoAndSixWantsOneWayInverted() {
    TwoWays draft = new TwoWays();
    draft.plan.orders(List.of(2)).kind(Kind.LINKWITZ_RILEY);
    assertTrue(draft.codes().contains("way-inverted"));
    draft.plan.orders(List.of(6));
    assertTrue(draft.codes().contains("way-inverted"));
    draft.plan.orders(List.of(4));
    assertFalse(draft.codes().contains("way-inverted"));
  }

  @Test
  void waysInTheWrongOrderAndCrossoversTooCloseAreSaid() {
    TwoWays draft = new TwoWays();
    draft.ways.get(0).sdCm2(5.0);
    assertTrue(draft.codes().contains("ways-out-of-order"));

    TwoWays close = new TwoWays();
    close.ways.add(0, TwoWays.way("woofer", 80));
    close.ways.get(1).lowerLimitHz(1500.0);
    assertTrue(close.codes().contains("crossovers-close"), close.codes()::toString);
    close.ways.get(1).lowerLimitHz(2400.0);
    assertTrue(close.codes().contains("crossovers-reversed"), close.codes()::toString);
  }

  @Test
  void aLowestWayWithoutDisplacementForTheLevelIsSaid() {
    TwoWays draft = new TwoWays();
    draft.low().xmaxMm(0.01);
    assertTrue(draft.codes().contains("lowest-way-short"));
  }

  @Test
  void aboveKaOneTheDisplacementIsOnlyRough() {
    TwoWays draft = new TwoWays();
    draft.high().sdCm2(50.0).xmaxMm(0.01).fsHz(300.0);
    draft.plan.beamingKa(4.0);
    Answer<CrossoverPlanResult> answer = draft.answer();
    assertEquals(LowReason.DISPLACEMENT, answer.result().crossovers().get(0).lowestReason());
    assertTrue(Answers.codes(answer).contains("displacement-law-limit"));
  }

  @Test
  void theRoleDecidesTheMultipleOfTheResonance() {
    TwoWays draft = new TwoWays();
    draft.high().role(WayRole.FULL_RANGE);
    assertEquals(
        900,
        draft.result().crossovers().get(0).lowLimits().stream()
            .filter(limit -> limit.reason() == LowReason.RESONANCE)
            .findFirst()
            .orElseThrow()
            .frequencyHz(),
        0);
    draft.high().resonanceMultiple(2.5);
    assertEquals(2250, draft.result().crossovers().get(0).lowestHz(), 0);
  }

  @Test
  void theCapacitorIsNamedWithWhatItDoesAndDoesNot() {
    TwoWays draft = new TwoWays();
    draft.plan.protection(new Protection(4.0, null));
    assertEquals(
        List.of("capacitor-effect", "turn-on-thump", "capacitor-near-resonance"), draft.codes());
    draft.high().fsHz(250.0).resonanceMultiple(8.0);
    assertFalse(draft.codes().contains("capacitor-near-resonance"));
  }

  @Test
  void impossibleRequestsAreRefusedWithEveryFault() {
    TwoWays draft = new TwoWays();
    draft.plan.orders(List.of(2, 3, 2)).kind(Kind.LINKWITZ_RILEY);
    draft.high().id("midrange").lowerLimitHz(3000.0).upperLimitHz(3000.0);
    draft.low().fcHz(100.0);
    draft
        .plan
        .processorLowestHz(5000.0)
        .processorHighestHz(4000.0)
        .pinkFromHz(1000.0)
        .pinkToHz(1000.0);
    draft.plan.wantedLevelDbSpl(300.0);
    assertEquals(
        List.of(
            "/orders/1",
            "/orders/2",
            "/pink_to_hz",
            "/processor_highest_hz",
            "/wanted_level_db_spl",
            "/ways/0/fc_hz",
            "/ways/1/driver/upper_limit_hz",
            "/ways/1/id"),
        draft.faults().stream().sorted().toList());
  }

  @Test
  void linkwitzRileyOfOddOrderIsRefused() {
    TwoWays draft = new TwoWays();
    draft.plan.orders(List.of(2, 3)).kind(Kind.LINKWITZ_RILEY);
    assertEquals(List.of("/orders/1"), draft.faults());
  }

  @Test
  void valuesOutOfBoundsAreRefused() {
    TwoWays draft = new TwoWays();
    draft.plan.orders(List.of(9)).wantedLevelDbSpl(300.0);
    draft.high().sdCm2(null).ratedOhm(-4.0);
    assertEquals(
        List.of(
            "/orders/0",
            "/wanted_level_db_spl",
            "/ways/1/driver/rated_ohm",
            "/ways/1/driver/sd_cm2"),
        draft.faults().stream().sorted().toList());
  }
}
