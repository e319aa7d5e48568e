package org.footwell.web.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.acoustic.level.SoundLevelRequest;
import org.footwell.acoustic.level.SoundLevelResult;
import org.footwell.analysis.Sweep;
import org.footwell.calculation.Engine;
import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Digits;
import org.footwell.web.request.Endpoint;
import org.footwell.calculation.Shape;
import org.footwell.web.request.JsonTokens;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * A sweep of sound-level, whole, from its request to the last byte of its table; beside it as many
 * plain answers of the engine, one after the other, and the single values alone.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgs = "-XX:+UseSerialGC")
public class SweepBenchmark {

  private static final Duration LONG = Duration.ofSeconds(10);

  @Param({"1000", "10000", "100000"})
  public int rows;

  private final Engine engine = new Engine();
  private final SoundLevel calculation = new SoundLevel();
  private final Endpoint<SoundLevelRequest, SoundLevelResult> endpoint =
      new Endpoint<>(calculation, engine, LONG);
  private byte[] asked;
  private ExecutorService one;
  private ExecutorService two;
  private SoundLevelRequest request;

  @Setup
  public void prepare() throws IOException {
    String example = endpoint.card().example();
    asked =
        ("{\"request\": "
                + example
                + ", \"inputs\": [{\"path\": \"power_w\", \"from\": 1, \"to\": 200, \"count\": "
                + rows
                + "}], \"outputs\": [\"level_db_spl\", \"exposure_allowed_h\"]}")
            .getBytes(StandardCharsets.UTF_8);
    request = JsonTokens.read(
            Shape.of(SoundLevelRequest.class), example.getBytes(StandardCharsets.UTF_8));
    one = Executors.newFixedThreadPool(1);
    two = Executors.newFixedThreadPool(2);
  }

  @TearDown
  public void stop() {
    one.shutdownNow();
    two.shutdownNow();
  }

  /** What the ordinary way costs without reading and writing. */
  @Benchmark
  public void plainAnswers(Blackhole sink) {
    for (int i = 0; i < rows; i++) {
      sink.consume(engine.answer(calculation, request, false, LONG));
    }
  }

  /** The same without sentences. */
  @Benchmark
  public void silentAnswers(Blackhole sink) {
    for (int i = 0; i < rows; i++) {
      sink.consume(engine.outcome(calculation, request, LONG));
    }
  }

  @Benchmark
  public void sweptToCsvOnOneCore() throws IOException {
    swept(one, true);
  }

  @Benchmark
  public void sweptToCsvOnTwoCores() throws IOException {
    swept(two, true);
  }

  @Benchmark
  public void sweptToJsonOnTwoCores() throws IOException {
    swept(two, false);
  }

  private void swept(ExecutorService workers, boolean csv) throws IOException {
    Sweep<SoundLevelRequest, SoundLevelResult> sweep = endpoint.sweep(asked);
    SweepForm form =
        csv ? new SweepCsv(sweep, new CsvForm(',', null, Digits.ALL), Reader.ANYONE) : new SweepJson(sweep, false, Digits.ALL);
    Pipeline pipeline = new Pipeline(workers, 4, OutputStream.nullOutputStream(), Reader.ANYONE);
    SweepHandler.write(endpoint, sweep, form, pipeline, Reader.ANYONE);
  }
}
