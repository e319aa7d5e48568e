package org.footwell.acoustic.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.exposure.SoundExposure;
import org.footwell.acoustic.exposure.SoundExposureRequest;
import org.footwell.acoustic.exposure.SoundExposureRequest.Period;
import org.footwell.acoustic.level.SoundLevelRequest.Addition;
import org.footwell.acoustic.level.SoundLevelRequest.Band;
import org.footwell.acoustic.level.SoundLevelRequest.Cabin;
import org.footwell.acoustic.level.SoundLevelRequest.Compression;
import org.footwell.acoustic.level.SoundLevelRequest.Cone;
import org.footwell.acoustic.level.SoundLevelRequest.Drive;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;
import org.junit.jupiter.api.Test;

class SoundLevelTest {

  private static final SoundLevel CALCULATION = new SoundLevel();

  /** A request in the making; starts as 90 dB per watt, 8 ohm, 1 W at 1 m. */
  static final class Draft {
    Sensitivity sensitivity = new Sensitivity(90.0, Basis.ONE_WATT);
    double ratedOhm = 8;
    Double powerW = 1.0;
    Double voltageV;
    Double distanceM;
    Integer driverCount;
    Drive drive;
    Addition addition;
    Cabin cabin;
    Compression compression;
    Double crestFactorDb;
    Double targetLevelDbSpl;
    Double roadNoiseDba;
    List<Band> spectrum;
    Double aWeightingDb;
    Double continuousPowerW;
    Cone cone;

    SoundLevelRequest request() {
      return SoundLevelRequestBuilder.builder()
          .sensitivity(sensitivity)
          .ratedOhm(ratedOhm)
          .powerW(powerW)
          .voltageV(voltageV)
          .distanceM(distanceM)
          .driverCount(driverCount)
          .drive(drive)
          .addition(addition)
          .cabin(cabin)
          .compression(compression)
          .crestFactorDb(crestFactorDb)
          .targetLevelDbSpl(targetLevelDbSpl)
          .roadNoiseDba(roadNoiseDba)
          .spectrum(spectrum)
          .aWeightingDb(aWeightingDb)
          .continuousPowerW(continuousPowerW)
          .cone(cone)
          .build();
    }

    Answer<SoundLevelResult> answer() {
      return Answers.of(CALCULATION, request());
    }
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    Draft draft = new Draft();
    draft.sensitivity = new Sensitivity(90.0, Basis.TWO_POINT_EIGHT_THREE_VOLT);
    draft.ratedOhm = 4;
    draft.powerW = 50.0;
    draft.distanceM = 1.2;
    draft.driverCount = 2;
    draft.drive = Drive.EACH;
    draft.addition = Addition.INCOHERENT;
    draft.crestFactorDb = 12.0;
    draft.aWeightingDb = -4.0;
    SoundLevelResult result = draft.answer().result();
    assertEquals(86.985, result.oneWattLevelDbSpl(), 5e-4);
    assertEquals(105.40, result.levelDbSpl(), 5e-3);
    assertEquals(117.40, result.peakLevelDbSpl(), 5e-3);
    assertEquals(101.40, result.levelDba(), 5e-3);
    assertEquals(0.181, result.exposureAllowedH(), 5e-4);
  }

  @Test
  void oneWattAtOneMetreIsTheSensitivity() {
    SoundLevelResult result = new Draft().answer().result();
    assertEquals(90, result.levelDbSpl(), 1e-12);
    assertEquals(93.0103, result.peakLevelDbSpl(), 1e-4);
  }

  @Test
  void voltageGivesThePowerIntoTheRatedImpedance() {
    Draft draft = new Draft();
    draft.powerW = null;
    draft.voltageV = 20.0;
    draft.ratedOhm = 4;
    assertEquals(100, draft.answer().result().driverPowerW(), 1e-12);
  }

  @Test
  void fourDriversInPhaseEachDrivenGainTwelveDbAndSixWhenTheyShare() {
    Draft draft = new Draft();
    draft.driverCount = 4;
    draft.addition = Addition.COHERENT;
    draft.drive = Drive.EACH;
    assertEquals(102.041, draft.answer().result().levelDbSpl(), 1e-3);
    draft.drive = Drive.SHARED;
    assertEquals(96.021, draft.answer().result().levelDbSpl(), 1e-3);
    draft.addition = Addition.INCOHERENT;
    assertEquals(90, draft.answer().result().levelDbSpl(), 1e-9);
  }

  @Test
  void inACabinDistanceCountsOnlyWithinTheCriticalDistance() {
    Draft draft = new Draft();
    draft.distanceM = 2.0;
    draft.cabin = new Cabin(3.0, 0.5, null, null);
    Answer<SoundLevelResult> answer = draft.answer();
    assertEquals(6.0206, answer.result().distanceDb(), 1e-4);
    assertNull(answer.result().cabinGainDb());
    assertTrue(Answers.codes(answer).contains("cabin-model"));
  }

  @Test
  void anOctaveBelowTheCornerTheCabinGainsTwelveDbUnlessCapped() {
    Draft draft = new Draft();
    draft.cabin = new Cabin(3.0, null, 343.2 / 6 / 2, 30.0);
    assertEquals(12.041, draft.answer().result().cabinGainDb(), 1e-3);
    draft.cabin = new Cabin(3.0, null, 343.2 / 6 / 2, 9.0);
    assertEquals(9, draft.answer().result().cabinGainDb(), 1e-12);
    draft.cabin = new Cabin(3.0, null, 200.0, 9.0);
    assertEquals(0, draft.answer().result().cabinGainDb(), 1e-12);
  }

  @Test
  void compressionIsAsStatedAtItsPowerAndTheNeededPowerMakesUpForIt() {
    Draft draft = new Draft();
    draft.powerW = 100.0;
    draft.compression = new Compression(3.0, 100.0);
    SoundLevelResult result = draft.answer().result();
    assertEquals(3, result.compressionDb(), 1e-9);
    assertEquals(107, result.levelDbSpl(), 1e-9);
    draft.targetLevelDbSpl = 107.0;
    assertEquals(100, draft.answer().result().powerNeededW(), 1e-6);
  }

  @Test
  void aTargetBeyondWhatCompressionAllowsIsOutOfReach() {
    Draft draft = new Draft();
    draft.compression = new Compression(6.0, 100.0);
    draft.targetLevelDbSpl = 130.0;
    Answer<SoundLevelResult> answer = draft.answer();
    assertNull(answer.result().powerNeededW());
    assertEquals("target-out-of-reach", answer.findings().get(0).code());
  }

  @Test
  void pastItsLimitTheCompressionModelSaysSo() {
    Draft draft = new Draft();
    draft.powerW = 500.0;
    draft.compression = new Compression(6.0, 100.0);
    assertTrue(Answers.codes(draft.answer()).contains("compression-model-limit"));
  }

  @Test
  void aSpectrumOfOneBandAtOneKilohertzIsNotWeighted() {
    Draft draft = new Draft();
    draft.spectrum = List.of(new Band(1000.0, 70.0));
    draft.roadNoiseDba = 95.0;
    Answer<SoundLevelResult> answer = draft.answer();
    assertEquals(90, answer.result().levelDba(), 1e-9);
    assertEquals(-5, answer.result().overRoadNoiseDb(), 1e-9);
    assertTrue(Answers.codes(answer).contains("below-road-noise"));
  }

  /** At 16 Hz the weighting of the exact frequency is 0.27 dB from that of the nominal one. */
  @Test
  void nominalThirdOctavesOfASpectrumAreTheExactOnes() {
    Draft draft = new Draft();
    draft.spectrum = List.of(new Band(16.0, 0.0));
    double nominal = draft.answer().result().levelDba();
    draft.spectrum = List.of(new Band(Math.pow(10, 1.2), 0.0));
    assertEquals(draft.answer().result().levelDba(), nominal, 1e-9);
    assertEquals(90 - 56.7, nominal, 0.051);
  }

  @Test
  void aSpectrumIsJudgedHereAsInTheExposureOfEightHours() {
    for (double level = 141; level <= 142.5; level += 0.05) {
      Draft draft = new Draft();
      draft.sensitivity = new Sensitivity(level - 40, Basis.ONE_WATT);
      draft.powerW = 1e4;
      draft.spectrum = List.of(new Band(16.0, 0.0));
      SoundExposureRequest day =
          new SoundExposureRequest(
              List.of(new Period(8.0, null, "bass", level, null, null)),
              List.of(new SoundExposureRequest.Band("bass", 16.0, 100.0)));
      assertEquals(
          Answers.codes(Answers.of(new SoundExposure(), day)).contains("dose-above-recommendation"),
          Answers.codes(draft.answer()).contains("exposure-limited"),
          level + " dB SPL");
    }
  }

  @Test
  void bandsGivenTwiceAreRefusedAndThoseOutsideTheStandardRemarked() {
    Draft draft = new Draft();
    draft.spectrum = List.of(new Band(63.0, 0.0), new Band(63.0957, 0.0));
    assertEquals(
        List.of("/spectrum/1/frequency_hz"),
        Answers.faults(CALCULATION, draft.request()).stream().map(Fault::pointer).toList());
    draft.spectrum = List.of(new Band(8.0, 0.0), new Band(10.0, 0.0), new Band(20_000.0, 0.0));
    assertEquals(
        List.of("/spectrum/0/frequency_hz"),
        draft.answer().findings().stream()
            .filter(finding -> finding.code().equals("band-outside-weighting"))
            .map(Finding::pointer)
            .toList());
  }

  /** 141 dB SPL of a sine at 31.5 Hz: 144.01 at its peaks, 141.0 C-weighted. */
  @Test
  void peaksAreHeldAgainstTheirLimitWithTheWeightingItIsMadeFor() {
    Draft draft = new Draft();
    draft.sensitivity = new Sensitivity(101.0, Basis.ONE_WATT);
    draft.powerW = 1e4;
    draft.spectrum = List.of(new Band(31.5, 0.0));
    SoundLevelResult result = draft.answer().result();
    assertEquals(144.01, result.peakLevelDbSpl(), 5e-3);
    assertEquals(138.0, result.levelDbc(), 0.051);
    assertEquals(141.0, result.peakLevelDbc(), 0.051);
    assertTrue(Answers.codes(draft.answer()).contains("peak-above-ceiling"));
    draft.spectrum = List.of(new Band(20.0, 0.0));
    assertEquals(List.of(), peaks(draft));
    draft.spectrum = null;
    assertEquals(List.of("peak-not-weighted"), peaks(draft));
    String said = draft.answer().findings().get(0).text();
    assertTrue(said.contains("144 dB SPL, unweighted") && said.contains("140 dBC"), said);
  }

  private static List<String> peaks(Draft draft) {
    return Answers.codes(draft.answer()).stream().filter(code -> code.startsWith("peak")).toList();
  }

  @Test
  void unweightedLevelsAreNeitherComparedWithRoadNoiseNorJudgedForHearing() {
    Draft draft = new Draft();
    draft.roadNoiseDba = 70.0;
    Answer<SoundLevelResult> answer = draft.answer();
    assertNull(answer.result().overRoadNoiseDb());
    assertNull(answer.result().exposureAllowedH());
    assertEquals(List.of("road-noise-not-comparable", "exposure-unknown"), Answers.codes(answer));
  }

  @Test
  void atOneHundredAndFortyDbaNothingIsAllowed() {
    Draft draft = new Draft();
    draft.powerW = 1e5 / 5;
    draft.sensitivity = new Sensitivity(110.0, Basis.ONE_WATT);
    draft.aWeightingDb = 0.0;
    assertEquals("exposure-ceiling", draft.answer().findings().get(0).code());
  }

  /** 530 cm², 10 mm and 30 Hz: 2.5518 Pa, 102.117 dB at 1 m. */
  private static Draft withCone() {
    Draft draft = new Draft();
    draft.cone = new Cone(530.0, 10.0, 30.0);
    return draft;
  }

  @Test
  void withoutFiguresForThemNoLimitsAreGiven() {
    assertNull(new Draft().answer().result().limits());
  }

  @Test
  void aSineMovesTheConeToItsLimitAtThePistonsLevel() {
    Draft draft = withCone();
    SoundLevelResult.Limits limits = draft.answer().result().limits();
    assertEquals(102.117, limits.displacementLevelDbSpl(), 1e-3);
    assertEquals(2.4785, limits.displacementMm(), 1e-3);
    assertEquals(90, limits.largestLevelDbSpl(), 1e-9);
    assertEquals(SoundLevelResult.Holds.POWER, limits.holds());
    assertNull(limits.thermalLevelDbSpl());
  }

  @Test
  void pastItsLimitTheConeHoldsTheLevel() {
    Draft draft = withCone();
    draft.powerW = 100.0;
    draft.continuousPowerW = 200.0;
    Answer<SoundLevelResult> answer = draft.answer();
    assertEquals(102.117, answer.result().limits().largestLevelDbSpl(), 1e-3);
    assertEquals(SoundLevelResult.Holds.DISPLACEMENT, answer.result().limits().holds());
    assertEquals(110, answer.result().levelDbSpl(), 1e-9);
    assertTrue(Answers.codes(answer).contains("displacement-limit-passed"));
    assertEquals(24.785, answer.findings().get(0).value(), 1e-2);
  }

  @Test
  void peaksAboveThoseOfASineLowerTheLevelTheConeAllows() {
    Draft draft = withCone();
    draft.crestFactorDb = 12.0;
    assertEquals(
        102.117 + 3.0103 - 12, draft.answer().result().limits().displacementLevelDbSpl(), 1e-3);
  }

  @Test
  void averagePowerAboveTheContinuousIsTooHot() {
    Draft draft = new Draft();
    draft.powerW = 400.0;
    draft.continuousPowerW = 100.0;
    Answer<SoundLevelResult> answer = draft.answer();
    assertEquals(110, answer.result().limits().largestLevelDbSpl(), 1e-9);
    assertEquals(SoundLevelResult.Holds.THERMAL, answer.result().limits().holds());
    assertNull(answer.result().limits().displacementLevelDbSpl());
    assertEquals("thermal-limit-passed", answer.findings().get(0).code());
    draft.powerW = 100.0;
    assertEquals(SoundLevelResult.Holds.POWER, draft.answer().result().limits().holds());
  }

  @Test
  void severalConesAndTheCabinAddToWhatTheConesAllow() {
    Draft draft = withCone();
    draft.driverCount = 2;
    draft.drive = Drive.EACH;
    draft.addition = Addition.COHERENT;
    draft.cabin = new Cabin(3.0, 0.5, 30.0, 6.0);
    // 6.02 dB for the number, 6.02 for half a metre and 6 for the cabin.
    assertEquals(102.117 + 18.041, draft.answer().result().limits().displacementLevelDbSpl(), 1e-3);
    draft.cabin = new Cabin(3.0, 0.5, 40.0, 6.0);
    assertTrue(Answers.codes(draft.answer()).contains("cabin-at-other-frequency"));
  }

  @Test
  void aConeThatBeamsIsNoPiston() {
    Draft draft = new Draft();
    draft.cone = new Cone(530.0, 10.0, 500.0);
    assertTrue(Answers.codes(draft.answer()).contains("cone-not-a-piston"));
  }

  @Test
  void everythingUndecidedIsRefusedAtOnce() {
    Draft draft = new Draft();
    draft.voltageV = 2.0;
    draft.driverCount = 2;
    draft.spectrum = List.of(new Band(1000.0, 70.0));
    draft.aWeightingDb = 0.0;
    assertEquals(
        List.of("", "/drive", "/addition", "/a_weighting_db"),
        Answers.faults(CALCULATION, draft.request()).stream().map(Fault::pointer).toList());
  }
}
