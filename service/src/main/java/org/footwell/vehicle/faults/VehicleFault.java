package org.footwell.vehicle.faults;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.footwell.parts.plan.VehiclePlan;

/**
 * One thing that may be wrong, with a figure that says how.
 *
 * @param thing what it is about; of two faults about one thing only one can be there
 * @param channels indexes of those whose sound or load it changes
 * @param amplifier index of the one whose supply it changes, or −1
 * @param part the driver or voice coil it is about, or null
 * @param range what its figure may be
 * @param change how a plan becomes one with it
 * @param told how its figure is told
 */
record VehicleFault(
    FaultKind kind,
    String thing,
    List<Integer> channels,
    int amplifier,
    String part,
    Range range,
    Change change,
    Told told) {

  /** A fault of one channel. */
  static VehicleFault of(
      FaultKind kind, String thing, int c, String part, Range range, Change change, Told told) {
    return new VehicleFault(kind, thing, List.of(c), -1, part, range, change, told);
  }

  /** The same where its kind says all. */
  static VehicleFault of(
      FaultKind kind, String thing, int c, String part, UnaryOperator<VehiclePlan> change) {
    return of(
        kind, thing, c, part, Range.NONE, (any, figure) -> change.apply(any), (line, figure) -> {});
  }

  /** A plan with a fault in it; the same where no plan can have it. */
  interface Change {
    VehiclePlan in(VehiclePlan plan, double figure);
  }

  /** Puts the figure of a fault where its line has it. */
  interface Told {
    void in(FaultLineBuilder line, double figure);
  }

  /**
   * What the figure of a fault may be: a few values, all as likely, or any around one.
   *
   * @param tried the values, or places to begin at, evenly spread
   * @param usual of a figure that may be any: what it most likely is
   * @param spread standard deviation around it; 0 for a few values
   */
  record Range(List<Double> tried, double usual, double spread) {

    /** No figure. */
    static final Range NONE = oneOf(1);

    static Range oneOf(int count) {
      return new Range(IntStream.range(0, count).mapToObj(i -> (double) i).toList(), 0, 0);
    }

    static Range around(double usual, double spread, double from, double to, double step) {
      return new Range(
          IntStream.rangeClosed(0, (int) Math.round((to - from) / step))
              .mapToObj(i -> from + i * step)
              .toList(),
          usual,
          spread);
    }

    boolean continuous() {
      return spread > 0;
    }
  }

  /** As it is answered. */
  FaultLine line(VehiclePlan plan, double figure) {
    FaultLineBuilder line =
        FaultLineBuilder.builder()
            .fault(kind)
            .channels(
                channels.isEmpty()
                    ? null
                    : channels.stream().map(c -> plan.channels().get(c).id()).toList())
            .amplifier(amplifier < 0 ? null : plan.amplifiers().get(amplifier).id())
            .driver(part);
    told.in(line, figure);
    return line.build();
  }
}
