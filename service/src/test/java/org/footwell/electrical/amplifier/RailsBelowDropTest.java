package org.footwell.electrical.amplifier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Verdict;
import org.footwell.parts.Driver;
import org.junit.jupiter.api.Test;

/** A supply so low that the rails do not reach above what the output stage loses. */
class RailsBelowDropTest {

  /** 12 V at 14.4 V, so 8.33 V at 10 V, where 9 V get lost. */
  private static RailMatchRequest sunk(Driver driver) {
    return new Match()
        .loadOhm(4.0)
        .rails(Requests.rails(12, 9, null, 0))
        .minimumOhm(2.0)
        .driver(driver)
        .supplyV(10.0)
        .build();
  }

  @Test
  void nothingComesOutAndThatIsAStop() {
    Answer<RailMatchResult> answer = Requests.answer(sunk(null));
    assertEquals(0, answer.result().cleanPowerW());
    assertEquals(Verdict.STOP, answer.verdict());
    assertEquals(
        "At 10 V the rails are 8.333 V, not above the 9 V the output stage loses:"
            + " nothing comes out. Check supply and drop.",
        answer.findings().get(0).inFull());
  }

  @Test
  void withADriverItIsTheSameAndHasNoHeadroom() {
    Answer<RailMatchResult> answer = Requests.answer(sunk(Requests.driver(50.0, 4.0)));
    assertEquals(0, answer.result().cleanPowerW());
    assertNull(answer.result().headroomDb());
    assertEquals(Verdict.STOP, answer.verdict());
    assertTrue(Answers.codes(answer).contains("rails-below-drop"));
  }
}
