package org.footwell.web.request;

import org.footwell.calculation.text.Reader;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.footwell.Calculations;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Shape;
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

/** Every calculation on the example of its card: computing alone, and from JSON to JSON. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class CalculationBenchmark {

  @Param({
    "wiring-load",
    "wiring-options",
    "rail-match",
    "sound-level",
    "seat-delays",
    "plan-review",
    "amplifier-ratings",
    "amplifier-heat",
    "gain-chain",
    "impedance-curve",
    "impedance-fit",
    "passive-network",
    "passive-filter",
    "supply-cable",
    "supply-budget",
    "crossover-plan",
    "adapter-ring",
    "driver-comparison",
    "sound-exposure",
    "equal-loudness",
    "seat-levels",
    "crossover-filters",
    "driver-check",
    "arrival-times",
    "closed-box",
    "vented-box",
    "box-panels",
    "level-and-balance",
    "response-correction",
    "loudspeaker-sum",
    "signal-sum",
    "bass-rolloff",
    "clip-point",
    "voice-coil-heat",
    "plan-questions"
  })
  public String id;

  private Prepared<?, ?> prepared;
  private byte[] json;

  @Setup
  public void prepare() {
    prepared =
        Calculations.all().stream()
            .filter(calculation -> calculation.card().id().equals(id))
            .map(CalculationBenchmark::prepare)
            .findFirst()
            .orElseThrow();
    json = Rendering.utf8(prepared.calculation().card().example());
  }

  private static <Q extends Record, R extends Record> Prepared<Q, R> prepare(
      Calculation<Q, R> calculation) {
    try {
      return new Prepared<>(
          new Endpoint<>(calculation, new Engine(), Duration.ofSeconds(10)),
          calculation,
          JsonTokens.read(
              Shape.of(calculation.card().request()),
              calculation.card().example().getBytes(StandardCharsets.UTF_8)),
          new Engine());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private record Prepared<Q extends Record, R extends Record>(
      Endpoint<Q, R> endpoint,
      Calculation<Q, R> calculation,
      Q request,
      Engine engine) {
    Answer<R> compute(boolean workings) {
      return engine.answer(calculation, request, workings, Duration.ofSeconds(10));
    }

    byte[] serve(byte[] json) {
      return endpoint.json(endpoint.answer(json, false, Reader.ANYONE).answer(), Digits.ALL);
    }
  }

  /** Validate, compute, judge. */
  @Benchmark
  public Object compute() {
    return prepared.compute(false);
  }

  /** The same with every step noted. */
  @Benchmark
  public Object computeWithWorkings() {
    return prepared.compute(true);
  }

  /** All that a POST does but the network. */
  @Benchmark
  public byte[] jsonToJson() {
    return prepared.serve(json);
  }
}
