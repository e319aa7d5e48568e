package org.footwell.acoustic.loudness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.loudness.EqualLoudnessResult.Band;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.junit.jupiter.api.Test;

class EqualLoudnessTest {

  private static final EqualLoudness CALCULATION = new EqualLoudness();

  private static EqualLoudnessRequest from(double tuned, double listening) {
    return new EqualLoudnessRequest(tuned, listening, null, null, null);
  }

  private static EqualLoudnessRequest within(double fromHz, double toHz) {
    return new EqualLoudnessRequest(85.0, 60.0, fromHz, toHz, null);
  }

  private static Band at(double frequency, EqualLoudnessResult result) {
    return result.bands().stream()
        .filter(band -> band.frequencyHz() == frequency)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    EqualLoudnessResult result = Answers.of(CALCULATION, from(80, 60)).result();
    Band band = at(50, result);
    assertEquals(101.81, band.tunedLevelDbSpl(), 5e-3);
    assertEquals(89.93, band.listeningLevelDbSpl(), 5e-3);
    assertEquals(8.12, band.liftDb(), 5e-3);
  }

  @Test
  void atOneKilohertzTheLevelIsTheLoudnessLevelAndNothingIsLifted() {
    Band band = at(1000, Answers.of(CALCULATION, from(80, 55)).result());
    assertEquals(80, band.tunedLevelDbSpl(), 1e-9);
    assertEquals(55, band.listeningLevelDbSpl(), 1e-9);
    assertEquals(0, band.liftDb(), 1e-9);
  }

  @Test
  void atTheThresholdOfOneKilohertzEveryContourIsTheThreshold() {
    for (int row : Contours.rows(20, 12_500)) {
      double level =
          Contours.LEVEL.at(
              2.4, Contours.exponent(row), Contours.transferDb(row), Contours.thresholdDb(row));
      assertEquals(Contours.thresholdDb(row), level, 1e-9);
    }
  }

  @Test
  void atTheSameLevelNothingIsLifted() {
    Answer<EqualLoudnessResult> answer = Answers.of(CALCULATION, from(70, 70));
    assertEquals(0, answer.result().largestLiftDb());
    assertNull(answer.result().largestLiftHz());
    assertEquals(List.of(), Answers.codes(answer));
  }

  @Test
  void aLiftBeyondTheCapIsCappedAndSaidToBe() {
    Answer<EqualLoudnessResult> answer = Answers.of(CALCULATION, from(80, 40));
    Band band = at(20, answer.result());
    assertEquals(20.88, band.balanceDb(), 5e-3);
    assertEquals(12, band.liftDb());
    assertEquals(List.of("lift-capped", "lift-only-when-quiet"), Answers.codes(answer));
    assertEquals(20.88, answer.findings().get(0).value(), 5e-3);
    assertEquals(12, answer.result().largestLiftDb());
    assertEquals(20, answer.result().largestLiftHz());
  }

  @Test
  void listeningLouderThanTunedTakesBassAway() {
    Answer<EqualLoudnessResult> answer = Answers.of(CALCULATION, from(40, 80));
    assertEquals(-12, at(20, answer.result()).liftDb());
    assertEquals(List.of("cut-capped"), Answers.codes(answer));
    assertEquals(0, answer.result().largestLiftDb());
  }

  @Test
  void aboveEightyPhonTheTrebleContoursAreOnlyContinued() {
    Answer<EqualLoudnessResult> answer = Answers.of(CALCULATION, within(20, 8000));
    assertTrue(Answers.codes(answer).contains("contour-not-measured"));
    assertEquals(27, answer.result().bands().size());
  }

  @Test
  void rangesWithoutThirdOctavesAreRefused() {
    assertEquals(
        List.of("not-ascending"),
        Answers.faults(CALCULATION, within(200, 100)).stream().map(Fault::code).toList());
    assertEquals(
        List.of("range-without-points"),
        Answers.faults(CALCULATION, within(21, 24)).stream().map(Fault::code).toList());
  }
}
