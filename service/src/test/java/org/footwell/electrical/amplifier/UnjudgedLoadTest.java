package org.footwell.electrical.amplifier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Verdict;
import org.junit.jupiter.api.Test;

/** Loads that nothing is known about are not passed over in silence. */
class UnjudgedLoadTest {

  private static Match bridged(double loadOhm) {
    return new Match().loadOhm(loadOhm).rails(Requests.rails(30, 4, null, 0)).bridged(true);
  }

  @Test
  void halfAnOhmWithoutAnyMinimumIsAWarning() {
    // 2·26 V peak into 0.5 ohm: 104 A, 2704 W
    Answer<RailMatchResult> answer = Requests.answer(bridged(0.5).build());
    assertEquals(2704, answer.result().cleanPowerW(), 1e-9);
    assertEquals(104, answer.result().peakCurrentA(), 1e-9);
    assertEquals(List.of("load-hardly-any", "minimum-not-given"), Answers.codes(answer));
    assertEquals(Verdict.WARNING, answer.verdict());
  }

  @Test
  void aUsualLoadWithoutAMinimumIsANote() {
    Answer<RailMatchResult> answer = Requests.answer(bridged(4).build());
    assertEquals(List.of("minimum-not-given"), Answers.codes(answer));
    assertNotEquals(Verdict.OK, answer.verdict());
  }

  @Test
  void whatTheMakerAllowsIsANoteWithTheCurrent() {
    Answer<RailMatchResult> answer = Requests.answer(bridged(1).minimumBridgedOhm(1.0).build());
    assertEquals(List.of("load-low-but-allowed"), Answers.codes(answer));
    assertEquals(
        "Each channel sees 0.5 ohm, which its maker allows: expect 52 A at the peaks. Every"
            + " milliohm of cable and joint counts there.",
        answer.findings().get(0).inFull());
  }

  @Test
  void belowTheMakersMinimumIsAStopAndNothingElse() {
    assertEquals(
        List.of("load-below-minimum"),
        Answers.codes(Requests.answer(bridged(1).minimumOhm(1.0).build())));
  }
}
