package org.footwell.analysis;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import org.footwell.calculation.Faults;
import org.footwell.calculation.Place;

/** The values that may be taken where not any number may be. */
final class Candidates {

  /** What dividing by a step may leave. */
  private static final double ROUNDING = 1e-9;

  private Candidates() {}

  /**
   * By rising value.
   *
   * @return empty where any number may be taken, or where a fault was added
   */
  static Optional<double[]> of(SolveRequest asked, Place input, Faults faults) {
    if (asked.values() != null) {
      return within(asked, "values", asked.values().stream().mapToDouble(one -> one), faults);
    }
    if (asked.series() != null) {
      return Values.standard(asked.series(), asked.from(), asked.to(), input.name(), "", faults)
          .map(Values::numbers);
    }
    if (asked.step() == null && !input.only().isEmpty()) {
      DoubleStream only = input.only().stream().mapToDouble(BigDecimal::doubleValue);
      return within(asked, input.name(), only, faults);
    }
    return asked.step() == null && !input.isWhole()
        ? Optional.empty()
        : multiples(asked, asked.step() == null ? 1 : asked.step(), faults);
  }

  private static Optional<double[]> multiples(SolveRequest asked, double step, Faults faults) {
    double first = Math.ceil(asked.from() / step * (1 - Math.signum(asked.from()) * ROUNDING));
    double last = Math.floor(asked.to() / step * (1 + Math.signum(asked.to()) * ROUNDING));
    double count = last - first + 1;
    if (count > Solve.MOST_VALUES) {
      faults
          .add(AnalysisFault.TOO_MANY_POINTS)
          .at(asked.step() == null ? "/to" : "/step")
          .with("count", count)
          .limit(Solve.MOST_VALUES);
      return Optional.empty();
    }
    BigDecimal one = BigDecimal.valueOf(step);
    DoubleStream all =
        LongStream.rangeClosed((long) first, (long) last)
            .mapToDouble(i -> one.multiply(BigDecimal.valueOf(i)).doubleValue());
    return within(asked, "step", all, faults);
  }

  private static Optional<double[]> within(
      SolveRequest asked, String what, DoubleStream values, Faults faults) {
    double[] some =
        values
            .filter(value -> value >= asked.from() && value <= asked.to())
            .sorted()
            .distinct()
            .toArray();
    if (some.length == 0) {
      faults
          .add(AnalysisFault.NO_STANDARD_VALUE)
          .at("/from")
          .given(what)
          .with("from", asked.from())
          .with("to", asked.to())
          .inUnitOf(asked.input(), "from", "to");
      return Optional.empty();
    }
    return Optional.of(some);
  }
}
