package org.footwell.measured.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.measured.response.Gate;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.LeftAndRight;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.parts.LevelAt;
import org.footwell.parts.TargetCurve;
import org.footwell.signal.ExponentialSweep;
import org.junit.jupiter.api.Test;

class LevelAndBalanceTest {

  private static MadeUpResponse click(double height) {
    return MadeUpResponse.click(24_000, 2000, height);
  }

  private static BalanceSession twoClicks() {
    BalanceSession session = new BalanceSession().microphone("m", null);
    session.channel("a", 100.0, 10_000.0, click(1));
    session.channel("b", 100.0, 10_000.0, click(0.5));
    session.pairs.add(new LeftAndRight("a", "b"));
    return session;
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    Answer<LevelAndBalanceResult> answer = twoClicks().answer();
    LevelAndBalanceResult result = answer.result();
    assertEquals("b", result.quietest());
    // 20·lg(0.5) = −6.0206 dB.
    assertEquals(-6.0206, result.channels().get(0).trimDb(), 1e-4);
    assertEquals(0, result.channels().get(1).trimDb(), 0);
    assertEquals(-6.0206, result.largestTrimDb(), 1e-4);
    // 10·lg((1 + 0.25)/(0.25 + 0.25)) = 3.9794 dB.
    assertEquals(3.9794, result.headroomCostDb(), 1e-4);
    assertEquals(6.0206, result.pairs().get(0).differenceDb(), 1e-4);
    assertEquals(0, result.pairs().get(0).trimmedDifferenceDb(), 1e-9);
    assertEquals(0, result.channels().get(0).errorDb(), 1e-4);
    assertEquals(List.of("trim-large", "one-position-only", "pair-uneven"), Answers.codes(answer));
  }

  @Test
  void aSingleSampleOfOneIsZeroDecibelsInEveryBand() {
    for (LevelAndBalanceResult.Band band : twoClicks().result().bands()) {
      assertEquals(band.channel().equals("a") ? 0 : -6.0206, band.levelDb(), 1e-4);
      assertEquals(band.frequencyHz() >= 99 && band.frequencyHz() <= 10_001, band.judged());
      assertEquals(120, band.signalToNoiseDb(), 0);
    }
  }

  @Test
  void bandsLieOnExactMidBandFrequencies() {
    List<LevelAndBalanceResult.Band> bands = twoClicks().result().bands();
    // From 20 Hz (19.953) to 20 kHz (19952.6): 31 for each of two channels.
    assertEquals(62, bands.size());
    assertEquals(1000 * Math.pow(10, -1.7), bands.get(0).frequencyHz(), 1e-9);
    assertEquals(1000 * Math.pow(10, 1.3), bands.get(30).frequencyHz(), 1e-9);
  }

  @Test
  void positionsAreAveragedByPowerAndTheirSpreadIsTold() {
    BalanceSession session = new BalanceSession().microphone("m", null).microphone("n", 3.0);
    session.channel("a", 100.0, 10_000.0, click(1), click(0.5));
    LevelAndBalanceResult.Band band = session.result().bands().get(15);
    // (1·1 + 3·0.25)/4 = 0.4375; levels 0 and −6.0206, their sample deviation 6.0206/√2.
    assertEquals(10 * Math.log10(0.4375), band.levelDb(), 1e-6);
    assertEquals(6.0206 / Math.sqrt(2), band.spreadDb(), 1e-4);
  }

  @Test
  void theWantedCurveShiftsChannelsThatPlayDifferentBands() {
    BalanceSession session = new BalanceSession().microphone("m", null);
    session.channel("low", 100.0, 200.0, click(0.5));
    session.channel("high", 1000.0, 2000.0, click(0.5));
    session.draft.target(
        new TargetCurve(List.of(new LevelAt(200.0, 4.0), new LevelAt(1000.0, 0.0)), null));
    LevelAndBalanceResult result = session.result();
    // The wanted curve asks for 4 dB more below 200 Hz, so the upper channel comes down by 4.
    assertEquals("low", result.quietest());
    assertEquals(-4, result.channels().get(1).trimDb(), 1e-6);
    assertEquals(0, result.channels().get(1).errorDb(), 1e-6);
  }

  @Test
  void aTiltIsCountedFromItsCorner() {
    BalanceSession session = twoClicks();
    session.draft.target(new TargetCurve(null, new TargetCurve.Slope(-3.0, 1000.0)));
    List<LevelAndBalanceResult.Band> bands = session.result().bands();
    double flat = bands.get(5).targetDb();
    assertEquals(flat, bands.get(17).targetDb(), 1e-9);
    // Ten third octaves up is 10 times the frequency: log2(10) octaves.
    assertEquals(flat - 3 * Math.log(10) / Math.log(2), bands.get(27).targetDb(), 1e-9);
  }

  @Test
  void theCalibrationOfTheMicrophoneIsSubtracted() {
    BalanceSession session = twoClicks();
    session.draft.calibration(List.of(new LevelAt(100.0, 0.0), new LevelAt(10_000.0, 2.0)));
    List<LevelAndBalanceResult.Band> bands = session.result().bands();
    assertEquals(-1, bands.get(17).levelDb(), 1e-4);
    assertEquals(-2, bands.get(30).levelDb(), 1e-4);
  }

  @Test
  void sweepsGiveTheLevelsOfTheirResponse() {
    ExponentialSweep played = new ExponentialSweep(50, 20_000, 0.5);
    BalanceSession session = new BalanceSession().microphone("m", null);
    session.playing(50.0, 20_000.0, 0.5);
    MadeUpResponse click = MadeUpResponse.click(12_000, 480, 0.5);
    session.channel("a", 200.0, 10_000.0, click.playing(played.signal(48_000)));
    Answer<LevelAndBalanceResult> answer = session.answer();
    assertEquals(-6.02, answer.result().channels().get(0).levelDb(), 0.02);
    assertEquals(List.of("one-position-only"), Answers.codes(answer));
    session.channels.set(0, new JudgedChannel("a", 40.0, 10_000.0));
    assertTrue(session.codes().contains("band-beyond-sweep"));
  }

  @Test
  void theBandIsFoundWhenNoneIsStated() {
    BalanceSession session = new BalanceSession().microphone("m", null);
    // A second-order Butterworth band from SciPy's table would do; here one pole pair at 1 kHz.
    session.channel("a", null, null, click(1).through(0.1, 0, -0.1, 1, -1.75, 0.78));
    Answer<LevelAndBalanceResult> answer = session.answer();
    LevelAndBalanceResult.ChannelLevel channel = answer.result().channels().get(0);
    assertTrue(channel.bandFromHz() > 100 && channel.bandToHz() < 10_000, channel::toString);
    assertTrue(Answers.codes(answer).contains("playing-band-found"));
  }

  @Test
  void noiseAndShortGatesAreToldWhenTheyMatter() {
    BalanceSession session = new BalanceSession().microphone("m", null);
    session.channel("a", 100.0, 10_000.0, click(1).noisy(0.01, 5));
    assertTrue(session.codes().contains("band-near-noise"));
    session = twoClicks();
    assertFalse(session.codes().contains("gate-too-short-for-bass"));
    session.draft.gate(new Gate(5.0, 5.0));
    Answer<LevelAndBalanceResult> answer = session.answer();
    assertTrue(Answers.codes(answer).contains("gate-too-short-for-bass"));
    assertEquals(200, answer.result().gateLimitHz(), 1e-9);
  }

  @Test
  void unevenBandsAndPairsWithoutAnythingInCommonAreTold() {
    BalanceSession session = new BalanceSession().microphone("m", null);
    session.channel("a", 100.0, 1000.0, click(1));
    session.channel("b", 1250.0, 10_000.0, click(1));
    session.channel("c", 100.0, 1000.0, click(1).reflected(0.7, 48));
    session.pairs.add(new LeftAndRight("a", "b"));
    session.pairs.add(new LeftAndRight("a", "c"));
    Answer<LevelAndBalanceResult> answer = session.answer();
    assertTrue(Answers.codes(answer).contains("pair-without-common-band"));
    assertTrue(Answers.codes(answer).contains("pair-uneven-in-bands"));
  }

  @Test
  void requestsThatCannotBeAnsweredAreRefused() {
    BalanceSession session = twoClicks();
    session.pairs.add(new LeftAndRight("b", "a"));
    session.pairs.add(new LeftAndRight("a", "a"));
    session.channel("c", 300.0, 310.0, click(1));
    session.takes.remove(0);
    assertEquals(
        List.of(
            "/channels/2 channel-band-empty",
            "/recordings take-missing",
            "/pairs/1 duplicate",
            "/pairs/2 pair-of-one"),
        session.faults());
    session = twoClicks();
    session.draft.fromHz(19_000.0).toHz(19_500.0);
    assertEquals(List.of("/from_hz range-without-points"), session.faults());
  }

  @Test
  void rulesBetweenFieldsAreHeldAllAtOnce() {
    BalanceSession session = twoClicks();
    session.pairs.add(new LeftAndRight("a", "x"));
    session.channel("d", 300.0, null, click(1));
    session
        .draft
        .target(new TargetCurve(null, null))
        .calibration(List.of(new LevelAt(200.0, 0.0), new LevelAt(100.0, 0.0)))
        .fromHz(5000.0)
        .toHz(100.0);
    assertEquals(
        List.of(
            "/calibration/1/frequency_hz not-ascending",
            "/channels/2/to_hz needed-beside",
            "/pairs/1/right dangling-reference",
            "/target exactly-one-of",
            "/to_hz not-ascending"),
        session.faults().stream().sorted().toList());
  }

  @Test
  void aChannelThatDrownsInNoiseIsRefused() {
    BalanceSession session = new BalanceSession().microphone("m", null);
    session.channel("a", null, null, MadeUpResponse.click(24_000, 2000, 1e-9).noisy(0.1, 3));
    List<String> faults = session.faults();
    assertEquals(List.of("/channels/0 channel-not-heard"), faults);
  }
}
