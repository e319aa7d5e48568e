package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.AlignmentFinding.CROSSOVER_NOT_STATED;
import static org.footwell.acoustic.alignment.AlignmentFinding.FILTER_DELAYS_DISAGREE;
import static org.footwell.acoustic.alignment.AlignmentFinding.FILTER_DELAY_UNKNOWN;
import static org.footwell.calculation.Source.COMMON_PRACTICE;
import static org.footwell.calculation.Source.DEFINITION;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.footwell.acoustic.alignment.SeatDelaysRequest.PlacedChannel;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.parts.Crossover;
import org.footwell.parts.Filter;
import org.footwell.physics.AnalogFilter;

/**
 * The filter delay that counts for each channel. Low-pass and high-pass of one pair have the same
 * group delay at every frequency, so making up for the low-pass alone would spoil their sum: partners
 * are compared at their crossover frequency, from the highest channel down.
 */
final class FilterDelays {

  /** Partners that ask for delays farther apart than this, in degrees at the crossover, disagree. */
  private static final double DISAGREEMENT_DEG = 10;

  private static final Formula.Of3 THROUGH_CROSSOVER =
      Formula.of("filter_delay_ms", "τ_upper + τg_lower(f) − τg_upper(f)", "ms", COMMON_PRACTICE)
          .with("τ_upper", "τg_lower", "τg_upper", (own, lower, upper) -> own + lower - upper);
  private static final Formula.Of2 DISAGREEMENT_MS =
      Formula.of("limit_ms", "1000·φ/(360·f)", "ms", DEFINITION)
          .with("φ", "f", (phase, f) -> 1000 * phase / (360 * f));

  private final SeatDelaysRequest q;
  private final Roster roster;
  private final Run run;
  private final double[] ms;

  private FilterDelays(SeatDelaysRequest q, Run run) {
    this.q = q;
    this.roster = new Roster(q);
    this.run = run;
    this.ms = new double[q.channels().size()];
  }

  /** Filter delay of every channel, ms, with what there is to say about them. */
  static double[] of(SeatDelaysRequest q, Run run) {
    FilterDelays delays = new FilterDelays(q, run);
    for (int channel : highestFirst(q, delays.roster)) {
      List<Crossover> above = delays.above(channel);
      delays.ms[channel] =
          above.isEmpty() ? delays.ownLowPass(channel) : delays.through(channel, above);
      if (q.channels().size() > 1) {
        delays.remark(channel, above.isEmpty());
      }
    }
    return delays.ms;
  }

  /**
   * Channels in an order in which each follows all it crosses over up to. Those that play below
   * themselves, in a circle of crossovers, are missing.
   */
  static List<Integer> highestFirst(SeatDelaysRequest q, Roster roster) {
    List<Integer> order = new ArrayList<>();
    int before = -1;
    while (order.size() > before) {
      before = order.size();
      for (int i = 0; i < q.channels().size(); i++) {
        String name = q.channels().get(i).name();
        boolean allAbovePlaced =
            Roster.orNone(q.crossovers()).stream()
                .filter(crossover -> crossover.lower().equals(name))
                .allMatch(crossover -> order.contains(roster.channel(crossover.upper())));
        if (allAbovePlaced && !order.contains(i)) {
          order.add(i);
        }
      }
    }
    return order;
  }

  /** Delay of a channel's low-pass at low frequencies, ms; null without one. */
  static Double lowPassMs(PlacedChannel channel) {
    return channel.lowPass() == null ? null : channel.lowPass().lowPass().groupDelayMs(0);
  }

  private List<Crossover> above(int channel) {
    String name = q.channels().get(channel).name();
    return Roster.orNone(q.crossovers()).stream()
        .filter(crossover -> crossover.lower().equals(name))
        .toList();
  }

  private double ownLowPass(int channel) {
    Filter filter = q.channels().get(channel).lowPass();
    return filter == null ? 0 : groupDelay(filter, filter.lowPass(), 0);
  }

  private double through(int channel, List<Crossover> above) {
    DoubleSummaryStatistics wanted = new DoubleSummaryStatistics();
    double highest = 0;
    for (Crossover crossover : above) {
      int upper = roster.channel(crossover.upper());
      double frequency = crossover.frequencyHz();
      highest = Math.max(highest, frequency);
      wanted.accept(
          run.apply(
              THROUGH_CROSSOVER,
              ms[upper],
              allFilters(channel, frequency),
              allFilters(upper, frequency)));
    }
    double apart = wanted.getMax() - wanted.getMin();
    double limit = DISAGREEMENT_MS.at(DISAGREEMENT_DEG, highest);
    if (apart > limit) {
      run.find(FILTER_DELAYS_DISAGREE)
          .at("/channels/" + channel)
          .value(apart)
          .limit(limit)
          .own("name", q.channels().get(channel).name());
    }
    return wanted.getAverage();
  }

  private double allFilters(int channel, double frequency) {
    Filter high = q.channels().get(channel).highPass();
    Filter low = q.channels().get(channel).lowPass();
    return (high == null ? 0 : groupDelay(high, high.highPass(), frequency))
        + (low == null ? 0 : groupDelay(low, low.lowPass(), frequency));
  }

  /** One step of the workings per filter; its sections are summed in the physics. */
  private double groupDelay(Filter filter, AnalogFilter analog, double frequency) {
    return run.apply(
        Formula.of(
                "group_delay_ms",
                "Σ 1000/(2·π)·(f0/Q)·(f0² + f²)/((f0² − f²)² + (f·f0/Q)²) over the sections",
                "ms",
                AnalogFilter.SECTION)
            .with("corner", "order", "f", (corner, order, f) -> analog.groupDelayMs(f)),
        filter.frequencyHz(),
        filter.order(),
        frequency);
  }

  private void remark(int index, boolean onTop) {
    PlacedChannel channel = q.channels().get(index);
    if (channel.highPass() == null && channel.lowPass() == null && !channel.fullRange()) {
      run.find(FILTER_DELAY_UNKNOWN).at("/channels/" + index).own("name", channel.name());
    }
    if (channel.lowPass() != null && onTop) {
      run.find(CROSSOVER_NOT_STATED)
          .at("/channels/" + index + "/low_pass")
          .value(lowPassMs(channel))
          .own("name", channel.name());
    }
  }
}
