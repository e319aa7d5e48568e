package org.footwell.growth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.Set;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.DeadlinePassed;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The largest request of every calculation is stopped where its time is over; save where there is nothing to stop. */
@Tag("long")
class DeadlineOfLargeRequestsTest {

  /** What has no loop that a request could make long: {@code CostGrowth} shows how little they take. */
  private static final Set<String> WITHOUT_LOOPS =
      Set.of(
          "wiring-load",
          "rail-match",
          "sound-level",
          "amplifier-ratings",
          "gain-chain",
          "supply-cable",
          "supply-budget",
          "adapter-ring",
          "driver-comparison",
          "sound-exposure",
          "equal-loudness",
          "driver-check",
          "box-panels");

  /** What answers with the best found until then. */
  private static final String BEST_SO_FAR = "plan-repair";

  private static final LargeRequest.Source SOURCE = new LargeRequest.Source();

  private static Stream<String> ids() {
    return Calculations.BY_ID.keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("ids")
  void isStoppedWhenItsTimeIsOver(String id) {
    Calculation<?, ?> calculation = Calculations.BY_ID.get(id).get();
    Asking<?, ?> late = Asking.of(calculation, Duration.ofNanos(-1));
    LargeRequest large = SOURCE.of(calculation.card(), late::refusal);
    boolean answers = WITHOUT_LOOPS.contains(id) || id.equals(BEST_SO_FAR);
    assertEquals(answers, answers(late, Asking.bytes(large.largest())), id);
  }

  private static boolean answers(Asking<?, ?> asking, byte[] request) {
    try {
      return asking.answer(request).length > 0;
    } catch (DeadlinePassed stopped) {
      return false;
    }
  }
}
