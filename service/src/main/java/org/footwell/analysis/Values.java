package org.footwell.analysis;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.footwell.analysis.SweepInput.Spacing;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Faults;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Names;
import org.footwell.parts.StandardValues;

/**
 * The values an input takes, each worked out when it is its turn.
 *
 * @param count how many there are, which may be more than are allowed
 * @param each by its index
 */
record Values(long count, IntFunction<Object> each) {

  /** What adding up steps may leave. */
  private static final double ROUNDING = 1e-9;

  /**
   * Those a sweep asks for.
   *
   * @param at where it asks, as a JSON Pointer
   * @return empty if a fault was added
   */
  static Optional<Values> of(SweepInput asked, String at, Faults faults) {
    if (asked.values() != null || asked.names() != null) {
      return listed(asked, at, faults);
    }
    if (asked.step() != null) {
      return Optional.of(stepped(asked.from(), asked.to(), asked.step()));
    }
    if (asked.series() != null) {
      return standard(asked.series(), asked.from(), asked.to(), asked.path(), at, faults);
    }
    boolean ratios = asked.spacing() == Spacing.LOGARITHMIC;
    return ratios && !isAboveZero(asked.from(), at, faults)
        ? Optional.empty()
        : Optional.of(spaced(asked));
  }

  private static boolean isAboveZero(double from, String at, Faults faults) {
    if (from <= 0) {
      faults.add(CoreFault.NOT_ALLOWED).at(at + "/from").given(from).allowed(Allowed.above(0, ""));
    }
    return from > 0;
  }

  /** A list says all by itself: a range beside it would be passed over. */
  private static Optional<Values> listed(SweepInput asked, String at, Faults faults) {
    boolean isNumbers = asked.values() != null;
    String list = isNumbers ? "values" : "names";
    refuseBeside(list, asked.from(), at + "/from", faults);
    refuseBeside(list, asked.to(), at + "/to", faults);
    List<?> all = isNumbers ? asked.values() : asked.names();
    return Optional.of(new Values(all.size(), all::get));
  }

  private static void refuseBeside(String list, Double end, String at, Faults faults) {
    if (end != null) {
      faults.add(CoreFault.NOT_ALLOWED).at(at).given(end).allowed(Allowed.leftOutBeside(list));
    }
  }

  /** From a number in steps to no more than another: as they are written, not as binary adds up. */
  private static Values stepped(double from, double to, double step) {
    BigDecimal first = BigDecimal.valueOf(from);
    BigDecimal each = BigDecimal.valueOf(step);
    double steps = Math.floor((to - from) / step * (1 + ROUNDING) + ROUNDING);
    return new Values(
        (long) steps + 1, i -> first.add(each.multiply(BigDecimal.valueOf(i))).doubleValue());
  }

  /**
   * Those that parts are made in, from one number to another.
   *
   * @param of path of the quantity they are values of
   */
  static Optional<Values> standard(
      StandardValues series, double from, double to, String of, String at, Faults faults) {
    if (series.repeats() && !isAboveZero(from, at, faults)) {
      return Optional.empty();
    }
    double[] some = series.between(from, to);
    if (some.length == 0) {
      faults
          .add(AnalysisFault.NO_STANDARD_VALUE)
          .at(at + "/series")
          .given(Names.of(series))
          .with("from", from)
          .with("to", to)
          .inUnitOf(of, "from", "to");
      return Optional.empty();
    }
    return Optional.of(new Values(some.length, i -> some[i]));
  }

  private static Values spaced(SweepInput asked) {
    double from = asked.from();
    double to = asked.to();
    int last = asked.count() - 1;
    return new Values(
        asked.count(),
        i ->
            i == 0
                ? from
                : i == last
                    ? to
                    : asked.spacing() == Spacing.LOGARITHMIC
                        ? from * Math.pow(to / from, (double) i / last)
                        : from + (to - from) * i / last);
  }

  /** All of them where they are numbers. */
  double[] numbers() {
    return IntStream.range(0, (int) count).mapToDouble(i -> (Double) each.apply(i)).toArray();
  }
}
