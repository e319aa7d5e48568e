package org.footwell;

import java.time.Duration;
import java.util.List;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Refused;
import org.junit.jupiter.api.Assertions;

/** Runs calculations for tests through the real engine. */
public final class Answers {

  private static final Engine ENGINE = new Engine();

  private Answers() {}

  public static <Q extends Record, R extends Record> Answer<R> of(
      Calculation<Q, R> calculation, Q request) {
    return ENGINE.answer(calculation, request, false, Duration.ofSeconds(30));
  }

  public static <Q extends Record, R extends Record> Answer<R> withWorkings(
      Calculation<Q, R> calculation, Q request) {
    return ENGINE.answer(calculation, request, true, Duration.ofSeconds(30));
  }

  /** Faults of a request that must be refused. */
  public static <Q extends Record, R extends Record> List<Fault> faults(
      Calculation<Q, R> calculation, Q request) {
    return Assertions.assertThrows(Refused.class, () -> of(calculation, request)).faults();
  }

  /** Codes of the findings, worst first. */
  public static List<String> codes(Answer<?> answer) {
    return answer.findings().stream().map(Finding::code).toList();
  }
}
