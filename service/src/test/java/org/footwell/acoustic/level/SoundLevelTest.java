package org.footwell.acoustic.level;

import static org.footwell.acoustic.level.SoundLevels.answer;
import static org.footwell.acoustic.level.SoundLevels.cabin;
import static org.footwell.acoustic.level.SoundLevels.driver;
import static org.footwell.acoustic.level.SoundLevels.oneWatt;
import static org.footwell.acoustic.level.SoundLevels.perWatt;
import static org.footwell.acoustic.level.SoundLevels.refusedAt;
import static org.footwell.acoustic.level.SoundLevels.result;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.footwell.Answers;
import org.footwell.acoustic.exposure.SoundExposure;
import org.footwell.acoustic.exposure.SoundExposureRequest;
import org.footwell.acoustic.exposure.SoundExposureRequestPeriodBuilder;
import org.footwell.acoustic.level.SoundLevelRequest.Addition;
import org.footwell.acoustic.level.SoundLevelRequest.Band;
import org.footwell.acoustic.level.SoundLevelRequest.Compression;
import org.footwell.acoustic.level.SoundLevelRequest.Drive;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;
import org.junit.jupiter.api.Test;

class SoundLevelTest {

  @Test
  void theHandExampleOfTheMethodPage() {
    SoundLevelRequestBuilder draft =
        oneWatt()
            .driver(
                driver()
                    .sensitivity(new Sensitivity(90.0, Basis.TWO_POINT_EIGHT_THREE_VOLT))
                    .ratedOhm(4.0)
                    .build())
            .powerW(50.0)
            .distanceM(1.2)
            .driverCount(2)
            .drive(Drive.EACH)
            .addition(Addition.INCOHERENT)
            .crestFactorDb(12.0)
            .aWeightingDb(-4.0);
    SoundLevelResult result = result(draft);
    assertEquals(86.985, result.oneWattLevelDbSpl(), 5e-4);
    assertEquals(105.40, result.levelDbSpl(), 5e-3);
    assertEquals(117.40, result.peakLevelDbSpl(), 5e-3);
    assertEquals(101.40, result.levelDba(), 5e-3);
    assertEquals(0.181, result.exposureAllowedH(), 5e-4);
  }

  @Test
  void oneWattAtOneMetreIsTheSensitivity() {
    SoundLevelResult result = result(oneWatt());
    assertEquals(90, result.levelDbSpl(), 1e-12);
    assertEquals(93.0103, result.peakLevelDbSpl(), 1e-4);
  }

  @Test
  void voltageGivesThePowerIntoTheRatedImpedance() {
    SoundLevelRequestBuilder draft =
        oneWatt().powerW(null).voltageV(20.0).driver(driver().ratedOhm(4.0).build());
    assertEquals(100, result(draft).driverPowerW(), 1e-12);
  }

  @Test
  void fourDriversInPhaseEachDrivenGainTwelveDbAndSixWhenTheyShare() {
    SoundLevelRequestBuilder draft =
        oneWatt().driverCount(4).addition(Addition.COHERENT).drive(Drive.EACH);
    assertEquals(102.041, result(draft).levelDbSpl(), 1e-3);
    draft.drive(Drive.SHARED);
    assertEquals(96.021, result(draft).levelDbSpl(), 1e-3);
    draft.addition(Addition.INCOHERENT);
    assertEquals(90, result(draft).levelDbSpl(), 1e-9);
  }

  @Test
  void inACabinDistanceCountsOnlyWithinTheCriticalDistance() {
    Answer<SoundLevelResult> answer =
        answer(oneWatt().distanceM(2.0).cabin(cabin().criticalDistanceM(0.5).build()));
    assertEquals(6.0206, answer.result().distanceDb(), 1e-4);
    assertNull(answer.result().cabinGainDb());
    assertTrue(Answers.codes(answer).contains("cabin-model"));
  }

  @Test
  void anOctaveBelowTheCornerTheCabinGainsTwelveDbUnlessCapped() {
    SoundLevelRequestBuilder draft =
        oneWatt().cabin(cabin().gainCapDb(30.0).build()).frequencyHz(343.2 / 6 / 2);
    assertEquals(12.041, result(draft).cabinGainDb(), 1e-3);
    draft.cabin(cabin().gainCapDb(9.0).build());
    assertEquals(9, result(draft).cabinGainDb(), 1e-12);
    draft.frequencyHz(200.0);
    assertEquals(0, result(draft).cabinGainDb(), 1e-12);
  }

  @Test
  void compressionIsAsStatedAtItsPowerAndTheNeededPowerMakesUpForIt() {
    SoundLevelRequestBuilder draft =
        oneWatt().powerW(100.0).compression(new Compression(3.0, 100.0));
    SoundLevelResult result = result(draft);
    assertEquals(3, result.compressionDb(), 1e-9);
    assertEquals(107, result.levelDbSpl(), 1e-9);
    draft.targetLevelDbSpl(107.0);
    assertEquals(100, result(draft).powerNeededW(), 1e-6);
  }

  @Test
  void aTargetBeyondWhatCompressionAllowsIsOutOfReach() {
    Answer<SoundLevelResult> answer =
        answer(oneWatt().compression(new Compression(6.0, 100.0)).targetLevelDbSpl(130.0));
    assertNull(answer.result().powerNeededW());
    assertEquals("target-out-of-reach", answer.findings().get(0).code());
  }

  @Test
  void pastItsLimitTheCompressionModelSaysSo() {
    assertTrue(
        Answers.codes(answer(oneWatt().powerW(500.0).compression(new Compression(6.0, 100.0))))
            .contains("compression-model-limit"));
  }

  @Test
  void aSpectrumOfOneBandAtOneKilohertzIsNotWeighted() {
    SoundLevelRequestBuilder draft =
        oneWatt().spectrum(List.of(new Band(1000.0, 70.0))).roadNoiseDba(95.0);
    Answer<SoundLevelResult> answer = answer(draft);
    assertEquals(90, answer.result().levelDba(), 1e-9);
    assertEquals(-5, answer.result().overRoadNoiseDb(), 1e-9);
    assertTrue(Answers.codes(answer).contains("below-road-noise"));
  }

  /** At 16 Hz the weighting of the exact frequency is 0.27 dB from that of the nominal one. */
  @Test
  void nominalThirdOctavesOfASpectrumAreTheExactOnes() {
    SoundLevelRequestBuilder draft = oneWatt().spectrum(List.of(new Band(16.0, 0.0)));
    double nominal = result(draft).levelDba();
    draft.spectrum(List.of(new Band(Math.pow(10, 1.2), 0.0)));
    assertEquals(result(draft).levelDba(), nominal, 1e-9);
    assertEquals(90 - 56.7, nominal, 0.051);
  }

  @Test
  void aSpectrumIsJudgedHereAsInTheExposureOfEightHours() {
    for (double level = 141; level <= 142.5; level += 0.05) {
      SoundLevelRequestBuilder draft =
          oneWatt().driver(perWatt(level - 40)).powerW(1e4).spectrum(List.of(new Band(16.0, 0.0)));
      SoundExposureRequest day =
          new SoundExposureRequest(
              List.of(
                  SoundExposureRequestPeriodBuilder.builder()
                      .durationH(8.0)
                      .spectrum("bass")
                      .levelDbSpl(level)
                      .build()),
              List.of(new SoundExposureRequest.Band("bass", 16.0, 100.0)));
      assertEquals(
          Answers.codes(Answers.of(new SoundExposure(), day)).contains("dose-above-recommendation"),
          Answers.codes(answer(draft)).contains("exposure-limited"),
          level + " dB SPL");
    }
  }

  @Test
  void bandsGivenTwiceAreRefusedAndThoseOutsideTheStandardRemarked() {
    SoundLevelRequestBuilder draft =
        oneWatt().spectrum(List.of(new Band(63.0, 0.0), new Band(63.0957, 0.0)));
    assertEquals(List.of("/spectrum/1/frequency_hz"), refusedAt(draft));
    draft.spectrum(List.of(new Band(8.0, 0.0), new Band(10.0, 0.0), new Band(20_000.0, 0.0)));
    assertEquals(
        List.of("/spectrum/0/frequency_hz"),
        answer(draft).findings().stream()
            .filter(finding -> finding.code().equals("band-outside-weighting"))
            .map(Finding::pointer)
            .toList());
  }

  /** 141 dB SPL of a sine at 31.5 Hz: 144.01 at its peaks, 141.0 C-weighted. */
  @Test
  void peaksAreHeldAgainstTheirLimitWithTheWeightingItIsMadeFor() {
    SoundLevelRequestBuilder draft =
        oneWatt().driver(perWatt(101)).powerW(1e4).spectrum(List.of(new Band(31.5, 0.0)));
    SoundLevelResult result = result(draft);
    assertEquals(144.01, result.peakLevelDbSpl(), 5e-3);
    assertEquals(138.0, result.levelDbc(), 0.051);
    assertEquals(141.0, result.peakLevelDbc(), 0.051);
    assertTrue(Answers.codes(answer(draft)).contains("peak-above-ceiling"));
    draft.spectrum(List.of(new Band(20.0, 0.0)));
    assertEquals(List.of(), peaks(draft));
    draft.spectrum(null);
    assertEquals(List.of("peak-not-weighted"), peaks(draft));
    String said = answer(draft).findings().get(0).inFull();
    assertTrue(said.contains("144 dB SPL, unweighted") && said.contains("140 dBC"), said);
  }

  private static List<String> peaks(SoundLevelRequestBuilder draft) {
    return Answers.codes(answer(draft)).stream().filter(code -> code.startsWith("peak")).toList();
  }

  @Test
  void unweightedLevelsAreNeitherComparedWithRoadNoiseNorJudgedForHearing() {
    Answer<SoundLevelResult> answer = answer(oneWatt().roadNoiseDba(70.0));
    assertNull(answer.result().overRoadNoiseDb());
    assertNull(answer.result().exposureAllowedH());
    assertEquals(List.of("road-noise-not-comparable", "exposure-unknown"), Answers.codes(answer));
  }

  @Test
  void atOneHundredAndFortyDbaNothingIsAllowed() {
    SoundLevelRequestBuilder draft =
        oneWatt().powerW(1e5 / 5).driver(perWatt(110)).aWeightingDb(0.0);
    assertEquals("exposure-ceiling", answer(draft).findings().get(0).code());
  }

  /** 530 cm², 10 mm and 30 Hz: 2.5518 Pa, 102.117 dB at 1 m. */
  private static SoundLevelRequestBuilder withCone() {
    return oneWatt().driver(cone().build()).displacementHz(30.0);
  }

  private static DriverBuilder cone() {
    return driver().sdCm2(530.0).xmaxMm(10.0);
  }

  @Test
  void withoutFiguresForThemNoLimitsAreGiven() {
    assertNull(result(oneWatt()).limits());
  }

  @Test
  void aSineMovesTheConeToItsLimitAtThePistonsLevel() {
    SoundLevelResult.Limits limits = result(withCone()).limits();
    assertEquals(102.117, limits.displacementLevelDbSpl(), 1e-3);
    assertEquals(2.4785, limits.displacementMm(), 1e-3);
    assertEquals(90, limits.largestLevelDbSpl(), 1e-9);
    assertEquals(SoundLevelResult.Holds.POWER, limits.holds());
    assertNull(limits.thermalLevelDbSpl());
  }

  @Test
  void pastItsLimitTheConeHoldsTheLevel() {
    Answer<SoundLevelResult> answer =
        answer(withCone().powerW(100.0).driver(cone().continuousPowerW(200.0).build()));
    assertEquals(102.117, answer.result().limits().largestLevelDbSpl(), 1e-3);
    assertEquals(SoundLevelResult.Holds.DISPLACEMENT, answer.result().limits().holds());
    assertEquals(110, answer.result().levelDbSpl(), 1e-9);
    assertTrue(Answers.codes(answer).contains("displacement-limit-passed"));
    assertEquals(24.785, answer.findings().get(0).value(), 1e-2);
  }

  @Test
  void peaksAboveThoseOfASineLowerTheLevelTheConeAllows() {
    assertEquals(
        102.117 + 3.0103 - 12,
        result(withCone().crestFactorDb(12.0)).limits().displacementLevelDbSpl(),
        1e-3);
  }

  @Test
  void averagePowerAboveTheContinuousIsTooHot() {
    SoundLevelRequestBuilder draft =
        oneWatt().powerW(400.0).driver(driver().continuousPowerW(100.0).build());
    Answer<SoundLevelResult> answer = answer(draft);
    assertEquals(110, answer.result().limits().largestLevelDbSpl(), 1e-9);
    assertEquals(SoundLevelResult.Holds.THERMAL, answer.result().limits().holds());
    assertNull(answer.result().limits().displacementLevelDbSpl());
    assertEquals("thermal-limit-passed", answer.findings().get(0).code());
    draft.powerW(100.0);
    assertEquals(SoundLevelResult.Holds.POWER, result(draft).limits().holds());
  }

  @Test
  void severalConesAndTheCabinAddToWhatTheConesAllow() {
    SoundLevelRequestBuilder draft =
        withCone()
            .driverCount(2)
            .drive(Drive.EACH)
            .addition(Addition.COHERENT)
            .cabin(cabin().criticalDistanceM(0.5).gainCapDb(6.0).build())
            .frequencyHz(30.0);
    // 6.02 dB for the number, 6.02 for half a metre and 6 for the cabin.
    assertEquals(102.117 + 18.041, result(draft).limits().displacementLevelDbSpl(), 1e-3);
    draft.frequencyHz(40.0);
    assertTrue(Answers.codes(answer(draft)).contains("cabin-at-other-frequency"));
  }

  @Test
  void aConeThatBeamsIsNoPiston() {
    assertTrue(
        Answers.codes(answer(withCone().displacementHz(500.0))).contains("cone-not-a-piston"));
  }

  @Test
  void severalDriversMustBeDecidedOn() {
    assertEquals(List.of("/drive", "/addition"), refusedAt(oneWatt().driverCount(2)));
  }

  @Test
  void formBoundsAndRulesAreRefusedAtOnce() {
    SoundLevelRequestBuilder draft =
        oneWatt()
            .driver(driver().ratedOhm(null).sdCm2(0.0).build())
            .voltageV(2.0)
            .distanceM(0.0)
            .spectrum(List.of(new Band(1000.0, 70.0)))
            .aWeightingDb(0.0)
            .frequencyHz(40.0)
            .displacementHz(40.0)
            .driverCount(2);
    assertEquals(
        Set.of(
            "/driver/sd_cm2",
            "/driver/xmax_mm",
            "/distance_m",
            "/driver/rated_ohm",
            "",
            "/a_weighting_db",
            "/cabin",
            "/drive",
            "/addition"),
        Set.copyOf(refusedAt(draft)));
    draft.driver(driver().build()).distanceM(1.0);
    assertEquals(
        List.of(
            "",
            "/a_weighting_db",
            "/cabin",
            "/driver/sd_cm2",
            "/driver/xmax_mm",
            "/drive",
            "/addition"),
        refusedAt(draft));
  }
}
