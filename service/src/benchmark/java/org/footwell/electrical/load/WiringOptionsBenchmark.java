package org.footwell.electrical.load;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.footwell.electrical.amplifier.DescribedAmplifier;
import org.footwell.electrical.amplifier.Ratings;
import org.footwell.calculation.Engine;
import org.footwell.electrical.load.WiringOptionsRequest.Coils;
import org.footwell.electrical.load.WiringOptionsRequest.Window;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The ways to wire coils at both limits: 8 alike and 6 that differ, every network in the window.
 * The heap is bounded, so that an answer which needs more fails.
 */
@State(Scope.Benchmark)
@BenchmarkMode({Mode.AverageTime, Mode.SingleShotTime})
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgs = "-Xmx64m")
public class WiringOptionsBenchmark {

  private final Engine engine = new Engine();
  private final WiringOptions options = new WiringOptions();
  private WiringOptionsRequest alike;
  private WiringOptionsRequest unlike;

  @Setup
  public void prepare() {
    List<Coils> six = new ArrayList<>();
    for (double ohm = 2; ohm <= 7; ohm++) {
      six.add(new Coils("coil_" + (int) ohm, ohm, 1));
    }
    alike = request(List.of(new Coils(null, 4.0, 8)));
    unlike = request(six);
  }

  private static WiringOptionsRequest request(List<Coils> coils) {
    List<Ratings.Point> points =
        List.of(new Ratings.Point(4.0, 100.0), new Ratings.Point(2.0, 160.0));
    DescribedAmplifier amplifier =
        new DescribedAmplifier(
            null, new Ratings(14.4, Ratings.Basis.CLEAN, points, null, null));
    return new WiringOptionsRequest(coils, new Window(0.1, null, null), null, amplifier, 100);
  }

  @Benchmark
  public Object eightAlike() {
    return engine.answer(options, alike, false, Duration.ofSeconds(5));
  }

  @Benchmark
  public Object sixUnlike() {
    return engine.answer(options, unlike, false, Duration.ofSeconds(5));
  }
}
