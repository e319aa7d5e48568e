package org.footwell.electrical.passive;

import org.footwell.loudspeaker.Ladder;
import org.footwell.parts.LadderElement;
import org.footwell.parts.CurveFrequencies;

import org.footwell.parts.Box;
import org.footwell.parts.BoxBuilder;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.physics.Impedance;
import org.footwell.physics.Phasor;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.electrical.impedance.MountedDriver;
import org.footwell.electrical.impedance.ImpedanceCurve;
import org.footwell.electrical.impedance.ImpedanceCurveRequest;
import org.footwell.electrical.impedance.ImpedanceFit;
import org.footwell.electrical.impedance.ImpedanceFitRequest;
import org.footwell.electrical.impedance.ImpedanceFitRequest.Reading;
import org.footwell.parts.LadderElement.Place;
import org.footwell.parts.Filter;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Curves of 500 points, with and without what goes around them: the points alone, and the whole
 * calculation with its checks and the search for extremes.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class CurveBenchmark {

  private static final int POINTS = 500;

  private final Engine engine = new Engine();
  private final double[] frequencies =
      IntStream.range(0, POINTS).mapToDouble(i -> 20 * Math.pow(1000, i / (POINTS - 1.0))).toArray();
  private final CurveFrequencies listed =
      CurveFrequencies.only(frequencies);
  private final Driver ideal =
      driver(1.0);
  private final Driver lossy =
      driver(0.7);
  private final Box vented = BoxBuilder.builder().volumeL(50.0).fbHz(35.0).ql(7.0).build();
  private final List<LadderElement> elements =
      List.of(
          LadderElement.capacitor(Place.SERIES, 100),
          LadderElement.coil(Place.SHUNT, 3),
          LadderElement.coil(Place.SERIES, 0.5),
          LadderElement.capacitor(Place.SHUNT, 10));
  private final ImpedanceFitRequest table = table();

  private static Driver driver(double exponent) {
    return DriverBuilder.builder().reOhm(3.4).ratedOhm(4.0).leMh(1.2).leExponent(exponent).fsHz(38.0).qms(7.0).qes(0.55).vasL(43.0).build();
  }

  private ImpedanceFitRequest table() {
    Impedance impedance = MountedDriver.circuit(lossy, null);
    List<Reading> readings = new ArrayList<>();
    for (double f : frequencies) {
      Phasor z = impedance.at(f);
      readings.add(new Reading(f, z.modulus(), z.phaseDeg()));
    }
    return new ImpedanceFitRequest(readings, null, null, null, null, null);
  }

  private double sum(Impedance impedance) {
    double sum = 0;
    for (double f : frequencies) {
      Phasor z = impedance.at(f);
      sum += z.modulus() + z.phaseDeg();
    }
    return sum;
  }

  private <Q extends Record, R extends Record> Object whole(
      Calculation<Q, R> calculation, Q request) {
    return engine.answer(calculation, request, false, Duration.ofSeconds(10));
  }

  /** The points of an ideal coil in free air. */
  @Benchmark
  public double pointsInFreeAir() {
    return sum(MountedDriver.circuit(ideal, null));
  }

  /** The points of a lossy coil in a vented box. */
  @Benchmark
  public double pointsInVentedBox() {
    return sum(MountedDriver.circuit(lossy, vented));
  }

  /** The points of a ladder of four before that. */
  @Benchmark
  public double pointsOfLadder() {
    return sum(new Ladder(elements, MountedDriver.circuit(lossy, vented)).input());
  }

  /** impedance-curve of a lossy coil in a vented box. */
  @Benchmark
  public Object impedanceCurve() {
    return whole(new ImpedanceCurve(), new ImpedanceCurveRequest(lossy, vented, listed));
  }

  /** passive-network of four elements before that. */
  @Benchmark
  public Object passiveNetwork() {
    return whole(
        new PassiveNetwork(),
        PassiveNetworkRequestBuilder.builder()
            .elements(elements)
            .driver(lossy)
            .box(vented)
            .frequencies(listed)
            .build());
  }

  /** passive-filter of four elements: four curves at once. */
  @Benchmark
  public Object passiveFilter() {
    Filter filter = Filter.of(Filter.Kind.LINKWITZ_RILEY, 4, 2000);
    return whole(
        new PassiveFilter(),
        PassiveFilterRequestBuilder.builder().loadOhm(3.4).lowPass(filter).compensate(true).driver(lossy).box(vented).frequencies(listed).build());
  }

  /** impedance-fit of 500 readings with phases. */
  @Benchmark
  public Object impedanceFit() {
    return whole(new ImpedanceFit(), table);
  }
}
