package org.footwell.electrical.load;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.footwell.parts.Amplifier;
import org.footwell.parts.Ratings;
import org.footwell.calculation.Engine;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.VoiceCoil;
import org.footwell.parts.VoiceCoilBuilder;
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
    List<VoiceCoil> six = new ArrayList<>();
    for (double ohm = 2; ohm <= 7; ohm++) {
      six.add(coils("coil_" + (int) ohm, ohm, 1));
    }
    alike = request(List.of(coils(null, 4.0, 8)));
    unlike = request(six);
  }

  private static VoiceCoil coils(String name, double ratedOhm, int count) {
    return VoiceCoilBuilder.builder().name(name).ratedOhm(ratedOhm).coilCount(count).build();
  }

  private static WiringOptionsRequest request(List<VoiceCoil> coils) {
    List<Ratings.Point> points =
        List.of(new Ratings.Point(4.0, 100.0), new Ratings.Point(2.0, 160.0));
    Amplifier amplifier =
        AmplifierBuilder.builder()
            .minimumOhm(0.1)
            .ratings(new Ratings(14.4, Ratings.Basis.CLEAN, points, null, null))
            .build();
    return new WiringOptionsRequest(coils, amplifier, null, null, 100);
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
