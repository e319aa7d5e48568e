package org.footwell.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.footwell.analysis.SolveResult.Seen;

/** What was seen of an output, by rising values of the input. */
record Samples(List<Sample> all) {

  /** Smaller differences are what calculating leaves of equal numbers. */
  private static final double ALIKE = 1e-12;

  static Samples of(DoubleStream values, DoubleFunction<Sample> look) {
    return new Samples(values.mapToObj(look).toList());
  }

  /** Those with an output. */
  Stream<Sample> known() {
    return all.stream().filter(Sample::isKnown);
  }

  Optional<Sample> least() {
    return known().min(Comparator.comparingDouble(Sample::output));
  }

  Optional<Sample> most() {
    return known().max(Comparator.comparingDouble(Sample::output));
  }

  /** How far the output goes. */
  double range() {
    return most().isEmpty() ? 0 : most().get().output() - least().get().output();
  }

  /** Whether there is an output anywhere. */
  boolean isAnyKnown() {
    return known().findAny().isPresent();
  }

  /** Whether the output is the same at several values, and nowhere another. */
  boolean isConstant() {
    return known().count() > 1 && range() <= ALIKE * size();
  }

  /** Whether an output that is the same everywhere is this one. */
  boolean isAt(double target) {
    return Math.abs(least().orElseThrow().output() - target) <= ALIKE * size();
  }

  /** Whether a number lies where the output goes. */
  boolean reach(double target) {
    return least().orElseThrow().output() <= target && most().orElseThrow().output() >= target;
  }

  private double size() {
    return known().mapToDouble(one -> Math.abs(one.output())).max().orElse(0);
  }

  Stream<Sample> refused() {
    return all.stream().filter(one -> one.refused() != null);
  }

  /** Answered, but without this output. */
  Stream<Sample> absent() {
    return all.stream().filter(one -> !one.isKnown() && one.refused() == null);
  }

  Seen told() {
    return new Seen(
        all.size(),
        (int) refused().count(),
        (int) absent().count(),
        least().map(Sample::output).orElse(null),
        least().map(Sample::value).orElse(null),
        most().map(Sample::output).orElse(null),
        most().map(Sample::value).orElse(null));
  }
}
