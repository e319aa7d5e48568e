package org.footwell.measured.arrival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.measured.arrival.ArrivalTimesRequest.Take;
import org.footwell.measured.arrival.ArrivalTimesRequest.TimeReference;
import org.footwell.measured.arrival.PairStudy.Trouble;
import org.footwell.measured.response.LeftAndRight;
import org.footwell.recording.Recording;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("long")
class LeftAgainstRightTest {

  private static final int SEED = 3;

  private static Session session(int polarity) {
    return PairStudy.session(SEED, polarity, new Trouble());
  }

  private static ArrivalTimesResult.Pair pair(Session session) {
    return session.result().pairs().get(0);
  }

  @Test
  void amongModesPairsAreToldWhereSingleWoofersAreNot() {
    PairStudy.Trials trials = PairStudy.run(40, trouble -> {});
    assertTrue(trials.told() >= 30 && trials.wrong() == 0, trials::toString);
  }

  @Test
  void anInvertedOneIsToldAndWhichOneIsNot() {
    Answer<ArrivalTimesResult> answer = session(-1).answer();
    ArrivalTimesResult.Pair pair = answer.result().pairs().get(0);
    assertEquals(-1, pair.polarity());
    assertTrue(pair.likeness() > 0.8, pair::toString);
    assertEquals(20, pair.lowHz(), 1e-9);
    assertTrue(Answers.codes(answer).contains("pair-against-each-other"));
    assertFalse(Answers.codes(answer).contains("polarity-inverted"));
    assertFalse(Answers.codes(session(1).answer()).contains("pair-against-each-other"));
    assertEquals(1, pair(session(1)).polarity());
  }

  @Test
  void itsBandEndsAtFourFifthsOfTheLowestModeByHand() {
    Session session = session(1);
    session.draft.cabinLengthM(2.5);
    // 0.8·343.2/(2·2.5) = 54.912 Hz.
    assertEquals(54.912, pair(session).highHz(), 0.001);
  }

  @Test
  void delaysThatWereSetAndStartsThatDifferAreTakenOff() {
    Session session = session(-1);
    double as = pair(session).likeness();
    float[] late = new float[24_000];
    double[] right = session.takes.get(1).recording().samples().toDoubles();
    for (int n = 480; n < late.length; n++) {
      late[n] = (float) right[n - 480];
    }
    session.takes.set(1, new Take("b", "m", Recording.of(48_000, late), null));
    session.channels.set(1, Session.named("b").chainDelayMs(10.0).build());
    assertEquals(as, pair(session).likeness(), 0.01);
    assertEquals(-1, pair(session).polarity());
    // 10 ms are half a turn at 50 Hz.
    session.channels.set(1, Session.named("b").build());
    assertTrue(pair(session).likeness() < 0.8 * as || pair(session).polarity() == 1);

    Session looped = session(-1);
    looped.draft.timeReference(TimeReference.LOOPBACK);
    for (int i = 0; i < 2; i++) {
      Recording sound = i == 0 ? looped.takes.get(0).recording() : Recording.of(48_000, late);
      looped.takes.set(i, new Take(i == 0 ? "a" : "b", "m", sound, click(100 + 480 * i)));
    }
    assertEquals(as, pair(looped).likeness(), 0.01);
    assertEquals(-1, pair(looped).polarity());
  }

  private static Recording click(int at) {
    float[] click = new float[24_000];
    click[at] = 0.5f;
    return Recording.of(48_000, click);
  }

  @Test
  void noiseIsUnsureNotATurnedPair() {
    Trouble trouble = new Trouble();
    trouble.peakToNoiseDb = 3;
    Session session = PairStudy.session(SEED, -1, trouble);
    Answer<ArrivalTimesResult> answer = session.answer();
    assertTrue(Answers.codes(answer).contains("pair-unsure"), () -> answer.result().toString());
    assertFalse(Answers.codes(answer).contains("pair-against-each-other"));
  }

  @Test
  void withoutATimeReferenceOrPairsNothingIsTold() {
    Session session = session(-1);
    session.draft.timeReference(TimeReference.NONE);
    assertNull(session.result().pairs());
    session = session(-1);
    session.pairs.clear();
    assertNull(session.result().pairs());
  }

  @Test
  void pairsNeedTheCabinAndTwoDifferentChannels() {
    Session session = session(1);
    session.draft.cabinLengthM(null);
    session.pairs.add(new LeftAndRight("b", "a"));
    session.pairs.add(new LeftAndRight("a", "a"));
    session.pairs.add(new LeftAndRight("a", "x"));
    assertEquals(
        List.of(
            "/cabin_length_m needed-beside",
            "/pairs/3/right dangling-reference",
            "/pairs/1 duplicate",
            "/pairs/2 pair-of-one"),
        session.faults());
    session.draft.cabinLengthM(2.0);
    session.pairs.remove(3);
    assertEquals(List.of("/pairs/1 duplicate", "/pairs/2 pair-of-one"), session.faults());
  }
}
