package org.footwell.measured.sum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.measured.response.ChannelTake;
import org.footwell.measured.response.Gate;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.measured.response.PlayedSweep;
import org.footwell.measured.response.RecordedKind;
import org.footwell.signal.ExponentialSweep;
import org.junit.jupiter.api.Test;

class LoudspeakerSumTest {

  private static MadeUpResponse click(int at, double height) {
    return MadeUpResponse.click(12_000, at, height);
  }

  /** Linkwitz-Riley at 1500 Hz, the upper one so many samples later and so much louder. */
  private static SumSession linkwitzRiley(int order, int later, double factor) {
    return new SumSession()
        .position(
            SumSession.linkwitzRiley(false, order, 1500, 1000, 0.5),
            SumSession.linkwitzRiley(true, order, 1500, 1000 + later, 0.5 * factor));
  }

  @Test
  void aFourthOrderLinkwitzRileyPairIsInPhaseAndLosesNothing() {
    Answer<LoudspeakerSumResult> answer = linkwitzRiley(4, 0, 1).answer();
    LoudspeakerSumResult result = answer.result();
    assertEquals(0, result.phaseDeg(), 0.1);
    assertEquals(0, result.lossAtCrossoverDb(), 1e-4);
    assertEquals(0, result.asSet().lossDb(), 1e-4);
    assertEquals(0, result.best().delayMs(), 0);
    assertEquals(1, result.best().polarity());
    assertNull(result.delayed());
    // Both are 6.02 dB down at the corner of a click of 0.5, and sum flat.
    assertEquals(-12.04, result.points().get(24).lowerDb(), 0.01);
    for (LoudspeakerSumResult.Point point : result.points()) {
      assertEquals(-6.02, point.sumDb(), 0.02);
    }
    assertEquals(List.of(), Answers.codes(answer));
  }

  @Test
  void aSecondOrderPairWantsOneWayInverted() {
    Answer<LoudspeakerSumResult> answer = linkwitzRiley(2, 0, 1).answer();
    LoudspeakerSumResult result = answer.result();
    assertEquals(180, Math.abs(result.phaseDeg()), 0.1);
    assertTrue(result.lossAtCrossoverDb() < -50, result::toString);
    assertEquals(-1, result.best().polarity());
    assertEquals(0, result.best().delayMs(), 0.001);
    assertEquals(0, result.best().lossDb(), 1e-3);
    assertTrue(Answers.codes(answer).containsAll(List.of("channels-cancel", "polarity-loses")));
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    // 8 samples at 48 kHz are a quarter of a period at 1500 Hz: the upper lags by 90 degrees.
    LoudspeakerSumResult result = linkwitzRiley(4, 8, 1).result();
    assertEquals(-90, result.phaseDeg(), 0.1);
    assertEquals(-3.01, result.lossAtCrossoverDb(), 0.01);
    assertEquals(-8 / 48.0, result.best().delayMs(), 0.001);
    assertEquals("low", result.delayed());
    assertEquals(1, result.best().polarity());
    assertEquals(0, result.best().lossDb(), 1e-3);
    assertTrue(result.otherPolarity().lossDb() < -0.2, result::toString);
  }

  @Test
  void aLowerWayThatComesLaterHasTheUpperDelayed() {
    LoudspeakerSumResult result = linkwitzRiley(4, -8, 1).result();
    assertEquals(8 / 48.0, result.best().delayMs(), 0.001);
    assertEquals("high", result.delayed());
  }

  @Test
  void levelsDoNotCountAsLossButAreTold() {
    Answer<LoudspeakerSumResult> answer = linkwitzRiley(4, 0, 3).answer();
    assertEquals(0, answer.result().asSet().lossDb(), 1e-4);
    assertEquals(9.54, answer.result().levelDifferenceDb(), 0.01);
    assertTrue(Answers.codes(answer).contains("levels-apart"));
  }

  @Test
  void positionsThatDisagreeAreTold() {
    SumSession session = linkwitzRiley(4, 0, 1);
    SumSession other = linkwitzRiley(4, 16, 1);
    session.microphones.add(new MicrophonePosition("m1", null));
    other.takes.forEach(
        take -> session.takes.add(new ChannelTake(take.channel(), "m1", take.recording())));
    Answer<LoudspeakerSumResult> answer = session.answer();
    assertEquals(0, answer.result().positions().get(0).phaseDeg(), 0.1);
    assertEquals(180, Math.abs(answer.result().positions().get(1).phaseDeg()), 0.1);
    assertTrue(answer.result().best().lossDb() < -1, answer.result()::toString);
    assertTrue(Answers.codes(answer).contains("loss-remains"));
  }

  @Test
  void sweepsGiveTheSame() {
    double[] played = new ExponentialSweep(100, 20_000, 0.3).signal(48_000);
    SumSession session = new SumSession();
    session.draft.kind(RecordedKind.SWEEP).sweep(new PlayedSweep(100.0, 20_000.0, 0.3, null));
    session.position(
        MadeUpResponse.click(9600, 480, 0.5).playing(played),
        MadeUpResponse.click(9600, 488, -0.5).playing(played));
    LoudspeakerSumResult result = session.result();
    assertEquals(90, result.phaseDeg(), 0.5);
    assertEquals(-8 / 48.0, result.best().delayMs(), 0.002);
    assertEquals(-1, result.best().polarity());
    assertEquals(0, result.best().lossDb(), 0.01);
  }

  @Test
  void noiseAndTheEndOfTheRangeAreTold() {
    SumSession session = linkwitzRiley(4, 40, 1);
    session.draft.delayRangeMs(0.05);
    assertTrue(session.codes().contains("delay-at-end-of-range"));
    session =
        new SumSession().position(click(1000, 0.5).noisy(0.02, 1), click(1000, 0.5).noisy(0.02, 2));
    assertTrue(session.codes().contains("sum-near-noise"));
  }

  @Test
  void requestsThatCannotBeAnsweredAreRefused() {
    SumSession session = linkwitzRiley(4, 0, 1);
    session.draft.crossoverHz(15_000.0);
    assertEquals(List.of("/crossover_hz crossover-beyond-recording"), session.faults());
    session.draft.crossoverHz(100.0).gate(new Gate(5.0, 5.0));
    assertEquals(List.of("/gate crossover-below-gate"), session.faults());
    session = linkwitzRiley(4, 0, 1);
    session.microphones.add(new MicrophonePosition("m1", null));
    assertEquals(List.of("/recordings take-missing", "/recordings take-missing"), session.faults());
  }
}
