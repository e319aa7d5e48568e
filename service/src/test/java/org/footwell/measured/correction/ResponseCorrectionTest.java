package org.footwell.measured.correction;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.measured.correction.ResponseCorrectionResult.Point;
import org.footwell.measured.correction.ResponseCorrectionResult.Section;
import org.footwell.measured.response.Gate;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.parts.LevelAt;
import org.footwell.parts.TargetCurve;
import org.footwell.signal.ExponentialSweep;
import org.footwell.signal.SectionDesign;
import org.footwell.signal.SectionKind;
import org.junit.jupiter.api.Test;

class ResponseCorrectionTest {

  private static CorrectionSession bells(double... bells) {
    CorrectionSession session = CorrectionSession.at(1);
    session.channel("a", 100.0, 10_000.0, Bells.with(Bells.flat(), bells));
    session.draft.smoothingPerOctave(24);
    return session;
  }

  private static ResponseCorrectionRequestFilterLimitsBuilder limits() {
    return ResponseCorrectionRequestFilterLimitsBuilder.builder();
  }

  /** Six positions whose reflection comes between 40 and 60 samples later: 600 to 400 Hz. */
  private static MadeUpResponse[] movingDips() {
    MadeUpResponse[] heard = new MadeUpResponse[6];
    for (int m = 0; m < heard.length; m++) {
      heard[m] = Bells.flat().reflected(0.8, 40 + 4 * m);
    }
    return heard;
  }

  @Test
  void aBellIsTakenBackByItsInverse() {
    Answer<ResponseCorrectionResult> answer = bells(1000, 2, 6).answer();
    Section only = answer.result().sections().get(0);
    assertEquals(1, answer.result().sections().size());
    assertEquals(1000, only.frequencyHz(), 3);
    // The wanted level is the median, a little above where the skirts of the bell end.
    assertEquals(2, only.q(), 0.25);
    assertEquals(-6, only.gainDb(), 0.1);
    assertEquals(SectionKind.PEAK, only.kind());
    assertEquals(
        SectionDesign.peak(only.frequencyHz(), only.q(), only.gainDb(), 48_000),
        only.coefficients());
    ResponseCorrectionResult.ChannelCorrection channel = answer.result().channels().get(0);
    assertTrue(channel.errorBeforeDb() > 1.5, channel::toString);
    assertTrue(channel.errorAfterDb() < 0.15, channel::toString);
    assertEquals(0, channel.headroomDb(), 0);
    assertNull(channel.headroomHz());
    assertEquals(-6.02, channel.targetOffsetDb(), 0.25);
    assertEquals(List.of("dips-not-tested"), Answers.codes(answer));
  }

  @Test
  void aDipThatStaysIsBoostedWithinTheLimitAndItsHeadroomTold() {
    CorrectionSession session = CorrectionSession.at(3);
    MadeUpResponse same = Bells.with(Bells.flat(), 1000, 2, -6);
    session.channel("a", 100.0, 10_000.0, same, same.times(0.9), same.times(1.1));
    session.draft.filters(CorrectionSession.limits(4, 3));
    Answer<ResponseCorrectionResult> answer = session.answer();
    ResponseCorrectionResult.ChannelCorrection channel = answer.result().channels().get(0);
    assertTrue(channel.headroomDb() > 2 && channel.headroomDb() < 3.11, channel::toString);
    assertEquals(1000, channel.headroomHz(), 150);
    assertTrue(channel.errorAfterDb() < channel.errorBeforeDb() - 0.5, channel::toString);
    assertEquals(0, channel.noBoostShare(), 0);
    assertTrue(Answers.codes(answer).contains("headroom-needed"));
  }

  @Test
  void aDipThatMovesFromPositionToPositionIsNeverBoosted() {
    CorrectionSession session = CorrectionSession.at(6);
    session.channel("a", 100.0, 2000.0, movingDips());
    session.draft.filters(CorrectionSession.limits(10, 12));
    Answer<ResponseCorrectionResult> answer = session.answer();
    long forbidden = 0;
    boolean dip = false;
    for (Point point : answer.result().points()) {
      assertEquals(point.spreadDb() <= 3, point.boostAllowed(), point::toString);
      if (!point.boostAllowed()) {
        forbidden++;
        dip |= point.levelDb() < point.targetDb() - 3;
        assertTrue(point.correctionDb() <= 0.1 + 1e-9, point::toString);
      }
    }
    assertTrue(forbidden > 5 && dip, "there is a dip that moves");
    assertTrue(Answers.codes(answer).contains("moving-dip-left"));
    // With a limit no spread reaches, the same dip is boosted.
    session.draft.movingDipDb(20.0);
    assertTrue(
        session.result().points().stream()
            .anyMatch(point -> point.spreadDb() > 3 && point.correctionDb() > 1));
  }

  @Test
  void theMeanIsByPowerWithItsSpread() {
    CorrectionSession session = CorrectionSession.at(2);
    session.channel("a", 100.0, 10_000.0, Bells.flat(), Bells.flat().times(0.5));
    Point point = session.result().points().get(50);
    // (0.25 + 0.0625)/2 = 0.15625.
    assertEquals(10 * Math.log10(0.15625), point.levelDb(), 1e-4);
    // One is 6.02 dB quieter throughout: a difference of level, not of form.
    assertEquals(0, point.spreadDb(), 1e-6);
    assertTrue(point.boostAllowed());
  }

  @Test
  void aPositionThatIsQuieterThroughoutForbidsNoBoost() {
    MadeUpResponse same = Bells.with(Bells.flat(), 1000, 2, -6);
    CorrectionSession alike =
        CorrectionSession.at(3).channel("a", 100.0, 10_000.0, same, same, same);
    CorrectionSession quieter =
        CorrectionSession.at(3)
            .channel("a", 100.0, 10_000.0, same, same.times(0.25), same.times(0.5));
    alike.draft.filters(CorrectionSession.limits(4, 3));
    quieter.draft.filters(CorrectionSession.limits(4, 3));
    ResponseCorrectionResult result = quieter.result();
    assertEquals(0, result.channels().get(0).noBoostShare(), 0);
    List<Section> expected = alike.result().sections();
    assertEquals(expected.size(), result.sections().size());
    for (int i = 0; i < expected.size(); i++) {
      assertEquals(expected.get(i).frequencyHz(), result.sections().get(i).frequencyHz(), 0.1);
      assertEquals(expected.get(i).gainDb(), result.sections().get(i).gainDb(), 0.01);
    }
  }

  @Test
  void dipsThatMoveAreFoundAtQuieterPositionsToo() {
    CorrectionSession session = CorrectionSession.at(6);
    MadeUpResponse[] heard = movingDips();
    session.channel("a", 100.0, 2000.0, heard);
    double[] spread = spreads(session);
    for (int m = 0; m < heard.length; m++) {
      heard[m] = heard[m].times(Math.pow(0.7, m));
    }
    CorrectionSession quieter = CorrectionSession.at(6).channel("a", 100.0, 2000.0, heard);
    assertArrayEquals(spread, spreads(quieter), 1e-3);
  }

  private static double[] spreads(CorrectionSession session) {
    return session.result().points().stream().mapToDouble(Point::spreadDb).toArray();
  }

  @Test
  void aDipAtOneOfTwoPositionsHasTheSpreadOfItsDepth() {
    CorrectionSession session = CorrectionSession.at(2);
    session.channel("a", 100.0, 10_000.0, Bells.flat(), Bells.with(Bells.flat(), 1000, 4, -9));
    session.draft.smoothingPerOctave(24);
    Point deepest =
        session.result().points().stream()
            .max((one, other) -> Double.compare(one.spreadDb(), other.spreadDb()))
            .orElseThrow();
    assertEquals(1000, deepest.frequencyHz(), 30);
    // Two values 9 dB apart: 9/√2, but for the skirts, which count as level at half the points.
    assertEquals(9 / Math.sqrt(2), deepest.spreadDb(), 0.25);
  }

  @Test
  void aWantedCurveIsMetNotOnlyAFlatOne() {
    CorrectionSession session = bells();
    session
        .draft
        .target(new TargetCurve(List.of(new LevelAt(300.0, 4.0), new LevelAt(600.0, 0.0)), null))
        .filters(CorrectionSession.limits(6, 6));
    ResponseCorrectionResult result = session.result();
    ResponseCorrectionResult.ChannelCorrection channel = result.channels().get(0);
    assertTrue(channel.errorAfterDb() < 0.5 * channel.errorBeforeDb(), channel::toString);
    Point low = result.points().get(0);
    Point high = result.points().get(result.points().size() - 1);
    assertEquals(4, low.targetDb() - high.targetDb(), 1e-9);
  }

  @Test
  void theCalibrationIsSubtracted() {
    CorrectionSession session = bells();
    session.draft.calibration(List.of(new LevelAt(1000.0, 1.5)));
    assertEquals(-6.0206 - 1.5, session.result().points().get(9).levelDb(), 1e-4);
  }

  @Test
  void theErrorIsToldByOctaves() {
    ResponseCorrectionResult result = bells(1000, 3, 6).result();
    ResponseCorrectionResult.Octave at1k =
        result.octaves().stream()
            .filter(octave -> Math.abs(octave.frequencyHz() - 1000) < 1)
            .findFirst()
            .orElseThrow();
    assertTrue(at1k.errorBeforeDb() > 3 && at1k.errorAfterDb() < 0.1, at1k::toString);
    // 100 Hz to 10 kHz touches the octaves of 125 Hz to 8 kHz.
    assertEquals(
        7,
        result.octaves().stream()
            .filter(o -> o.frequencyHz() > 110 && o.frequencyHz() < 9000)
            .count());
  }

  @Test
  void aFlatResponseNeedsNoFilters() {
    Answer<ResponseCorrectionResult> answer = bells().answer();
    assertEquals(List.of(), answer.result().sections());
    assertTrue(Answers.codes(answer).contains("little-gained"));
  }

  @Test
  void sweepsAndShortGatesLimitTheRange() {
    ExponentialSweep played = new ExponentialSweep(200, 8000, 0.4);
    CorrectionSession session = CorrectionSession.at(1);
    session.playing(200.0, 8000.0, 0.4);
    MadeUpResponse click = MadeUpResponse.click(12_000, 1200, 0.5);
    session.channel("a", 100.0, 10_000.0, click.playing(played.signal(48_000)));
    Answer<ResponseCorrectionResult> answer = session.answer();
    assertTrue(Answers.codes(answer).contains("range-beyond-sweep"));
    assertTrue(answer.result().channels().get(0).fromHz() > 200);
    session = bells(1000, 2, 6);
    session.draft.gate(new Gate(5.0, 4.0));
    answer = session.answer();
    assertTrue(Answers.codes(answer).contains("range-beyond-gate"));
    assertEquals(250, answer.result().gateLimitHz(), 1e-9);
    assertTrue(answer.result().channels().get(0).fromHz() >= 250);
  }

  @Test
  void nothingIsBoostedInNoise() {
    CorrectionSession session = CorrectionSession.at(1);
    MadeUpResponse dull = Bells.flat().through(0.05, 0, 0, 1, -0.95, 0);
    session.channel("a", 100.0, 10_000.0, dull.noisy(0.0005, 4));
    session.draft.filters(CorrectionSession.limits(6, 12));
    Answer<ResponseCorrectionResult> answer = session.answer();
    assertTrue(Answers.codes(answer).contains("range-near-noise"));
    Point last = answer.result().points().get(answer.result().points().size() - 1);
    assertTrue(!last.boostAllowed() && last.correctionDb() <= 0.1 + 1e-9, last::toString);
  }

  @Test
  void whatIsFarOffIsToldToBeMendedElsewhere() {
    CorrectionSession session = bells(200, 1, 15, 3000, 1, -15);
    session.draft.filters(limits().count(1).boostDb(1.0).cutDb(3.0).build());
    assertTrue(session.codes().contains("error-left"));
    session = CorrectionSession.at(1).channel("a", null, null, Bells.flat());
    assertTrue(session.codes().contains("correction-range-found"));
  }

  @Test
  void requestsThatCannotBeAnsweredAreRefused() {
    CorrectionSession session = bells();
    session.channels.add(new JudgedChannel("b", 5000.0, 5100.0));
    assertEquals(
        List.of("/channels/1 correction-range-empty", "/recordings take-missing"),
        session.faults());
    session.channels.add(new JudgedChannel("b", null, 5100.0));
    session.draft.filters(limits().lowestQ(5.0).highestQ(1.0).fromHz(500.0).toHz(200.0).build());
    assertEquals(
        List.of(
            "/channels/2/from_hz needed-beside",
            "/channels/2/id duplicate",
            "/filters/highest_q not-ascending",
            "/filters/to_hz not-ascending",
            "/recordings take-missing"),
        session.faults().stream().sorted().toList());
    session = CorrectionSession.at(1);
    session.channel("a", null, null, MadeUpResponse.click(24_000, 2000, 1e-9).noisy(0.1, 3));
    assertEquals(List.of("/channels/0 nothing-to-correct"), session.faults());
  }
}
