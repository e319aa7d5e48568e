package org.footwell.acoustic.seats;

import static org.footwell.acoustic.seats.Sources.driver;
import static org.footwell.acoustic.seats.Sources.filter;
import static org.footwell.acoustic.seats.Sources.two;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.seats.SeatLevelsRequest.SeatDistance;
import org.footwell.acoustic.seats.SeatLevelsRequest.TargetPoint;
import org.footwell.acoustic.seats.SeatLevelsRequest.Tilt;
import org.footwell.acoustic.seats.SeatLevelsResult.Largest;
import org.footwell.acoustic.seats.SeatLevelsResult.SeatBand;
import org.footwell.acoustic.seats.SeatLevelsResult.SourceBand;
import org.footwell.calculation.Answer;
import org.footwell.parts.CabinBuilder;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.Position;
import org.footwell.parts.SeatBuilder;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;
import org.junit.jupiter.api.Test;

class SeatLevelsTest {

  @Test
  void twoEqualSourcesInPhaseGainSixDb() {
    SeatBand band = two().only();
    assertEquals(List.of(110.0, 110.0), band.sourceLevelsDbSpl());
    assertEquals(116.0206, band.coherentLevelDbSpl(), 1e-4);
    assertEquals(113.0103, band.incoherentLevelDbSpl(), 1e-4);
    assertEquals(116.0206, band.levelDbSpl(), 1e-4);
    assertNull(band.targetLevelDbSpl());
  }

  @Test
  void aQuarterPeriodApartTheyAddAsPowersAndHalfAPeriodApartTheyCancel() {
    Sources draft = two();
    draft.sources.get(1).delayMs(2.5);
    assertEquals(113.0103, draft.only().coherentLevelDbSpl(), 1e-4);
    draft.sources.get(1).delayMs(5.0);
    assertEquals(113.0103 - 60, draft.only().coherentLevelDbSpl(), 1e-4);
    assertEquals("sources-cancel", draft.answer().findings().get(0).code());
    assertEquals(60, draft.answer().findings().get(0).value(), 1e-9);
    draft.sources.get(1).polarity(-1);
    assertEquals(116.0206, draft.only().coherentLevelDbSpl(), 1e-4);
  }

  @Test
  void aboveTheStatedFrequencyPowersAreAdded() {
    Sources draft = two();
    draft.levels.incoherentAboveHz(90.0);
    assertEquals(113.0103, draft.only().levelDbSpl(), 1e-4);
    assertEquals(List.of("phases-not-predicted"), Answers.codes(draft.answer()));
  }

  @Test
  void distanceAndCabinCountAsInSoundLevel() {
    Sources draft = new Sources();
    draft.add("a");
    draft.levels.distances(List.of(new SeatDistance("a", "driver", 2.0)));
    assertEquals(110 - 6.0206, draft.only().levelDbSpl(), 1e-4);
    draft.levels.cabin(
        CabinBuilder.builder().lengthM(3.0).criticalDistanceM(0.5).gainCapDb(30.0).build());
    assertEquals(110 + 6.0206, draft.only().levelDbSpl(), 1e-4);
    draft.levels.fromHz(25.0).toHz(25.0);
    double gain = 40 * Math.log10(343.2 / 6 / (1000 * Math.pow(10, -1.6)));
    assertEquals(110 + 6.0206 + gain, draft.only().levelDbSpl(), 1e-4);
    assertEquals(List.of("cabin-not-measured"), Answers.codes(draft.answer()));
  }

  @Test
  void positionsGiveTheSameAsTheirDistances() {
    Sources draft = new Sources();
    draft.add("a").position(new Position(1.0, 2.0, 2.0));
    draft.levels.seats(
        List.of(
            SeatBuilder.builder().name("driver").position(new Position(0.0, 0.0, 0.0)).build()));
    draft.measured = false;
    assertEquals(110 - 20 * Math.log10(3), draft.only().levelDbSpl(), 1e-9);
  }

  @Test
  void earsStandForTheirMidpoint() {
    Sources draft = new Sources();
    draft.measured = false;
    draft.add("a").position(new Position(1.0, 2.0, 2.0));
    draft.levels.seats(
        List.of(
            SeatBuilder.builder()
                .name("driver")
                .leftEar(new Position(0.0, 0.08, 0.0))
                .rightEar(new Position(0.0, -0.08, 0.0))
                .build()));
    assertEquals(110 - 20 * Math.log10(3), draft.only().levelDbSpl(), 1e-9);
  }

  /** Sound pressures of N drivers add, and so do their cone areas; power is that of each. */
  @Test
  void severalDriversOfASourcePlayAsOne() {
    Sources draft = new Sources();
    draft.add("a").driver(driver().continuousPowerW(25.0).build()).driverCount(2);
    SourceBand alone = draft.answer().result().sources().get(0).bands().get(0);
    assertEquals(SourceLimit.THERMAL, alone.limitedBy());
    assertEquals(25, alone.powerW(), 1e-9);
    assertEquals(103.979 + 6.021, alone.levelDbSpl(), 1e-3);
    draft.sources.get(0).driver(driver().sdCm2(265.0).xmaxMm(10.0).build());
    draft.levels.fromHz(31.5).toHz(31.5);
    alone = draft.answer().result().sources().get(0).bands().get(0);
    assertEquals(SourceLimit.DISPLACEMENT, alone.limitedBy());
    assertEquals(102.117 + 40 * Math.log10(31.6228 / 30), alone.levelDbSpl(), 1e-3);
  }

  @Test
  void heatHoldsASourceAtItsContinuousPower() {
    Sources draft = new Sources();
    draft.add("a").driver(driver().continuousPowerW(25.0).build());
    SourceBand alone = draft.answer().result().sources().get(0).bands().get(0);
    assertEquals(SourceLimit.THERMAL, alone.limitedBy());
    assertEquals(25, alone.powerW(), 1e-9);
    assertEquals(103.979, alone.levelDbSpl(), 1e-3);
    assertEquals(-6.021, draft.answer().result().bands().get(0).driveDb(), 1e-3);
  }

  @Test
  void aConeHoldsASourceAtThePistonsLevel() {
    Sources draft = new Sources();
    // As in sound-level: 530 cm² and 10 mm at 30 Hz are 102.117 dB; 31.62 Hz is 0.915 dB more.
    draft.add("a").driver(driver().sdCm2(530.0).xmaxMm(10.0).continuousPowerW(90.0).build());
    draft.levels.fromHz(31.5).toHz(31.5);
    SourceBand alone = draft.answer().result().sources().get(0).bands().get(0);
    assertEquals(SourceLimit.DISPLACEMENT, alone.limitedBy());
    assertEquals(102.117 + 40 * Math.log10(31.6228 / 30), alone.levelDbSpl(), 1e-3);
    assertEquals("a", draft.answer().result().bands().get(0).limitingSource());
  }

  @Test
  void trimAndFilterTakePowerAndRollOffDoesNot() {
    Sources draft = new Sources();
    draft
        .add("a")
        .trimDb(-3.0)
        .highPass(filter(Kind.BUTTERWORTH, 2, 100.0))
        .rollOff(new SoundSource.RollOff(100.0, 1.0));
    SourceBand alone = draft.answer().result().sources().get(0).bands().get(0);
    assertEquals(100 * Math.pow(10, -0.3) / 2, alone.powerW(), 1e-6);
    // At its resonance the roll-off is Q, 0 dB here.
    assertEquals(110 - 3 - 3.0103, alone.levelDbSpl(), 1e-4);
    assertEquals(SourceLimit.AMPLIFIER, alone.limitedBy());
  }

  @Test
  void aSourceWithoutAHighPassHoldsAllOthersBack() {
    Sources draft = two();
    draft
        .sources
        .get(0)
        .driver(driver().sensitivity(new Sensitivity(105.0, Basis.ONE_WATT)).build());
    SoundSourceBuilder small =
        draft.sources.get(1).driver(driver().sdCm2(50.0).xmaxMm(1.0).build());
    draft.levels.fromHz(25.0).toHz(25.0);
    Answer<SeatLevelsResult> answer = draft.answer();
    assertEquals("source-holds-back", answer.findings().get(0).code());
    assertEquals("b", answer.result().bands().get(0).limitingSource());
    small.highPass(filter(Kind.LINKWITZ_RILEY, 8, 400.0));
    assertFalse(Answers.codes(draft.answer()).contains("source-holds-back"));
  }

  @Test
  void headroomIsTheLevelOverTheTarget() {
    Sources draft = new Sources();
    draft.add("a").driver(driver().continuousPowerW(25.0).build());
    draft
        .levels
        .fromHz(80.0)
        .toHz(125.0)
        .target(List.of(new TargetPoint(100.0, 106.0), new TargetPoint(125.0, 100.0)));
    Answer<SeatLevelsResult> answer = draft.answer();
    List<SeatBand> bands = answer.result().seats().get(0).bands();
    assertNull(bands.get(0).headroomDb());
    assertEquals(-2.021, bands.get(1).headroomDb(), 1e-3);
    assertEquals(3.979, bands.get(2).headroomDb(), 1e-3);
    assertEquals(100, answer.result().smallestHeadroom().frequencyHz(), 1e-9);
    assertEquals(SourceLimit.THERMAL, answer.result().smallestHeadroom().limitedBy());
    assertEquals("headroom-short", answer.findings().get(0).code());
    assertEquals(
        "At 100 Hz the driver seat is 2.021 dB short of the target: heat of a. Lower"
            + " the target there, or take a stronger part for what holds it.",
        answer.findings().get(0).inFull());
  }

  @Test
  void whatIsNotGivenOfASourceIsNotJudgedAndSaid() {
    Sources draft = two();
    assertEquals(List.of(), Answers.codes(draft.answer()));
    draft.sources.get(0).driver(driver().sdCm2(null).build());
    draft.sources.get(1).driver(driver().xmaxMm(null).continuousPowerW(null).build());
    Answer<SeatLevelsResult> answer = draft.answer();
    assertEquals(List.of("movement-not-judged", "heat-not-judged"), Answers.codes(answer));
    assertTrue(answer.findings().get(0).inFull().contains("No cone is given of a, b:"));
    assertTrue(answer.findings().get(1).inFull().contains("given of b:"));
  }

  @Test
  void aTiltRunsThroughOneKilohertz() {
    Sources draft = new Sources();
    draft.add("a");
    draft.levels.fromHz(1000.0).toHz(2000.0).tilt(new Tilt(80.0, -3.0));
    List<SeatBand> bands = draft.answer().result().seats().get(0).bands();
    assertEquals(80, bands.get(0).targetLevelDbSpl(), 1e-9);
    // Three third octaves of base ten are 0.9966 octaves.
    assertEquals(80 - 3 * 0.9966, bands.get(3).targetLevelDbSpl(), 1e-3);
  }

  @Test
  void pointsOfTheTargetAtNominalThirdOctavesAreMeantAtTheExactOnes() {
    Sources draft = new Sources();
    draft.add("a");
    draft
        .levels
        .fromHz(31.5)
        .toHz(63.0)
        .target(List.of(new TargetPoint(31.5, 90.0), new TargetPoint(63.0, 60.0)));
    List<SeatBand> bands = draft.answer().result().seats().get(0).bands();
    assertEquals(90, bands.get(0).targetLevelDbSpl(), 1e-9);
    assertEquals(80, bands.get(1).targetLevelDbSpl(), 1e-9);
    assertEquals(60, bands.get(3).targetLevelDbSpl(), 1e-9);
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    Sources draft = new Sources();
    draft.add("a").driver(driver().continuousPowerW(50.0).build());
    draft
        .levels
        .fromHz(100.0)
        .toHz(125.0)
        .target(List.of(new TargetPoint(100.0, 90.0), new TargetPoint(125.0, 90.0)));
    // Two bands of 1 W each are 90 dB each: 2 W for 93.01 dB. Peaks of 12 dB leave 12.6 W of 100.
    Largest largest = draft.answer().result().largest();
    assertEquals(8, largest.overTargetDb(), 1e-3);
    assertEquals(SourceLimit.AMPLIFIER, largest.limitedBy());
    assertEquals(101.01, largest.seats().get(0).levelDbSpl(), 5e-3);
    draft.levels.crestFactorDb(4.0);
    largest = draft.answer().result().largest();
    assertEquals(SourceLimit.THERMAL, largest.limitedBy());
    assertEquals(10 * Math.log10(25), largest.overTargetDb(), 1e-9);
  }

  @Test
  void theConeHoldsAProgrammeByItsPeaks() {
    Sources draft = new Sources();
    draft.add("a").powerW(10_000.0).driver(driver().sdCm2(530.0).xmaxMm(10.0).build());
    draft
        .levels
        .fromHz(31.5)
        .toHz(31.5)
        .target(List.of(new TargetPoint(30.0, 90.0), new TargetPoint(33.0, 90.0)))
        .crestFactorDb(9.0);
    SeatLevelsResult result = draft.answer().result();
    double sine = result.sources().get(0).bands().get(0).levelDbSpl();
    assertEquals(SourceLimit.DISPLACEMENT, result.largest().limitedBy());
    assertEquals(sine + 3.0103 - 9, result.largest().seats().get(0).levelDbSpl(), 1e-4);
    assertEquals(sine - 90 + 3.0103 - 9, result.largest().overTargetDb(), 1e-4);
  }

  @Test
  void theLargestProgrammeIsJudgedForHearing() {
    Sources draft = new Sources();
    draft.add("a");
    draft.levels.fromHz(1000.0).toHz(1000.0).tilt(new Tilt(80.0, 0.0));
    Answer<SeatLevelsResult> answer = draft.answer();
    Largest largest = answer.result().largest();
    assertEquals(101.01, largest.seats().get(0).levelDbSpl(), 5e-3);
    assertEquals(largest.seats().get(0).levelDbSpl(), largest.seats().get(0).levelDba(), 1e-9);
    assertTrue(Answers.codes(answer).contains("largest-level-loud"));
  }

  @Test
  void theReferenceSeatHasTheShapeOfTheTarget() {
    Sources draft = two();
    draft
        .levels
        .seats(List.of(Sources.seat("driver"), Sources.seat("rear")))
        .referenceSeat("rear")
        .tilt(new Tilt(80.0, 0.0))
        .distances(
            List.of(
                new SeatDistance("a", "driver", 1.0),
                new SeatDistance("b", "driver", 1.2),
                new SeatDistance("a", "rear", 2.0),
                new SeatDistance("b", "rear", 2.5)));
    Largest largest = draft.answer().result().largest();
    assertEquals("rear", largest.referenceSeat());
    assertEquals(80 + largest.overTargetDb(), largest.seats().get(1).levelDbSpl(), 1e-9);
  }
}
