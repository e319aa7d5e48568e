package org.footwell.analysis.tolerance;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.footwell.Calculations;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.web.request.Endpoint;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The error budget of a level and of the demo van's review, usual tolerances, over the samples. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 10)
@Measurement(iterations = 3, time = 10)
@Fork(1)
public class ToleranceBenchmark {

  private static final Engine ENGINE = new Engine();
  private static final Duration LONG = Duration.ofMinutes(2);

  @Param({"sound-level", "plan-review"})
  private String calculation;

  @Param({"500", "1000", "2000"})
  private int samples;

  private Tolerance<?, ?> tolerance;
  private ToleranceRequest request;

  @Setup
  public void read() throws IOException {
    Calculation<?, ?> subject = Calculations.BY_ID.get(calculation).get();
    tolerance = new Tolerance<>(subject);
    String asked =
        "{\"request\": %s, \"usual_tolerances\": true, \"sample_count\": %d}"
            .formatted(question(subject), samples);
    request =
        ENGINE.bind(
            ToleranceRequest.class,
            Endpoint.untyped(asked.getBytes(StandardCharsets.UTF_8)),
            false);
  }

  private String question(Calculation<?, ?> subject) throws IOException {
    if (!calculation.equals("plan-review")) {
      return subject.card().example();
    }
    try (InputStream in = Calculations.class.getResourceAsStream("/examples/camper-van.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Benchmark
  public Object budget() {
    return ENGINE.answer(tolerance, request, false, LONG);
  }
}
