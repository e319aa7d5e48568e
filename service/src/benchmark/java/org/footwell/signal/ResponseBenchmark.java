package org.footwell.signal;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Eight sections at 1000 frequencies; the aim is less than 300 µs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ResponseBenchmark {

  private static final int POINTS = 1000;
  private static final double RATE = 48000;

  private final double[] frequencies =
      IntStream.range(0, POINTS).mapToDouble(i -> 20 * Math.pow(1000, i / (POINTS - 1.0))).toArray();
  private final CirclePoint[] circle = CirclePoint.of(frequencies, RATE);
  private final Cascade cascade =
      Cascade.of(
          List.of(
              SectionDesign.peak(60, 2, -5, RATE),
              SectionDesign.peak(120, 4, 3, RATE),
              SectionDesign.peak(900, 1, -2, RATE),
              SectionDesign.peak(3000, 5, 4, RATE),
              SectionDesign.lowShelf(200, 0.7, 6, RATE),
              SectionDesign.highShelf(8000, 0.7, -4, RATE),
              SectionDesign.allPass(400, 1, RATE),
              SectionDesign.notch(50, 8, RATE)));

  /** Level, phase and group delay, the frequencies not known before. */
  @Benchmark
  public double levelPhaseAndDelay() {
    double sum = 0;
    for (double f : frequencies) {
      Response here = cascade.at(CirclePoint.of(f, RATE));
      sum += here.levelDb() + here.phaseDeg() + here.delaySamples();
    }
    return sum;
  }

  /** The squared magnitude alone at prepared frequencies, as a fit needs it. */
  @Benchmark
  public double powerAtPreparedPoints() {
    double sum = 0;
    for (CirclePoint p : circle) {
      sum += cascade.power(p);
    }
    return sum;
  }
}
