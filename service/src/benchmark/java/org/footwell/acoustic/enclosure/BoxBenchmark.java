package org.footwell.acoustic.enclosure;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.footwell.calculation.Engine;
import org.footwell.acoustic.enclosure.ClosedBoxRequest.ClosedVolume;
import org.footwell.acoustic.enclosure.VentedBoxRequest.VentedVolume;
import org.footwell.parts.CurveFrequencies;
import org.footwell.acoustic.enclosure.radiator.BoxDriver;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Whole calculations of a driver in a box with a curve of 500 points. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class BoxBenchmark {

  private static final int POINTS = 500;

  private final Engine engine = new Engine();
  private final List<Double> hz =
      IntStream.range(0, POINTS).mapToObj(i -> 10 * Math.pow(20, i / (POINTS - 1.0))).toList();
  private final CurveFrequencies frequencies = new CurveFrequencies(null, 10.0, 200.0, hz);
  private final BoxDriver driver =
      new BoxDriver(
          3.4, 4.0, 30.0, 6.0, 0.42, 60.0, 330.0, 12.0, 1.5, 0.7, null, 300.0);
  private final ClosedBoxRequest closed =
      new ClosedBoxRequest(
          driver,
          new ClosedVolume(30.0, null, null, 20.0, 10.0, null, null, null, null),
          null,
          null,
          150.0,
          null,
          null,
          null,
          null,
          null,
          null,
          frequencies);
  private final VentedBoxRequest vented =
      new VentedBoxRequest(
          driver,
          new VentedVolume(45.0, 33.0, null, 50.0, 50.0, null, null, null, null),
          new BoxPort(null, 100.0, null, null, null, null, null),
          null,
          150.0,
          null,
          null,
          null,
          null,
          null,
          null,
          frequencies);

  /** closed-box with leaks: its corners are searched. */
  @Benchmark
  public Object closedBox() {
    return engine.answer(new ClosedBox(), closed, false, Duration.ofSeconds(10));
  }

  /** vented-box with all losses. */
  @Benchmark
  public Object ventedBox() {
    return engine.answer(new VentedBox(), vented, false, Duration.ofSeconds(10));
  }
}
