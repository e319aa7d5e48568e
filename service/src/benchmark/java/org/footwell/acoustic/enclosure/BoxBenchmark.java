package org.footwell.acoustic.enclosure;

import org.footwell.parts.BoxPort;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.footwell.calculation.Engine;

import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.BoxBuilder;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
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
  private final Driver driver =
      DriverBuilder.builder().reOhm(3.4).ratedOhm(4.0).fsHz(30.0).qms(6.0).qes(0.42).vasL(60.0).sdCm2(330.0).xmaxMm(12.0).leMh(1.5).leExponent(0.7).continuousPowerW(300.0).build();
  private final ClosedBoxRequest closed =
      ClosedBoxRequestBuilder.builder().driver(driver).box(BoxBuilder.builder().volumeL(30.0).ql(20.0).qa(10.0).build()).powerW(150.0).frequencies(frequencies).build();
  private final VentedBoxRequest vented =
      VentedBoxRequestBuilder.builder().driver(driver).box(BoxBuilder.builder().volumeL(45.0).fbHz(33.0).qa(50.0).qp(50.0).build()).port(new BoxPort(null, 100.0, null, null, null, null, null)).powerW(150.0).frequencies(frequencies).build();

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
