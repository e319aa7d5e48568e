package org.footwell.analysis.tolerance;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.footwell.Calculations;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Refused;
import org.footwell.web.request.Endpoint;

/** Error budgets asked for in JSON. */
final class Asking {

  private static final Engine ENGINE = new Engine();
  private static final Duration LONG = Duration.ofSeconds(60);

  private Asking() {}

  static Answer<ToleranceResult> of(String calculation, String json) {
    return of(Calculations.BY_ID.get(calculation).get(), json);
  }

  static <Q extends Record, R extends Record> Answer<ToleranceResult> of(
      Calculation<Q, R> subject, String json) {
    return within(LONG, subject, json);
  }

  static Answer<ToleranceResult> within(Duration time, String calculation, String json) {
    return within(time, Calculations.BY_ID.get(calculation).get(), json);
  }

  private static <Q extends Record, R extends Record> Answer<ToleranceResult> within(
      Duration time, Calculation<Q, R> subject, String json) {
    ToleranceRequest request =
        ENGINE.bind(
            ToleranceRequest.class, Endpoint.untyped(json.getBytes(StandardCharsets.UTF_8)), false);
    return ENGINE.answer(new Tolerance<>(subject), request, false, time);
  }

  static List<Fault> faults(String calculation, String json) {
    return faults(Calculations.BY_ID.get(calculation).get(), json);
  }

  static List<Fault> faults(Calculation<?, ?> subject, String json) {
    try {
      of(subject, json);
      return List.of();
    } catch (Refused refused) {
      return refused.faults();
    }
  }
}
