package org.footwell.vehicle.chain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.footwell.parts.Filter;
import org.footwell.parts.LevelAt;
import org.footwell.parts.plan.FactorySignal;
import org.footwell.parts.plan.ParametricFilter;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Phasor;
import org.footwell.signal.Biquad;
import org.footwell.signal.Cascade;
import org.footwell.signal.CirclePoint;

/** All filters of a channel, of the factory head unit and of the processor, without trim and delay. */
public final class FilterChain {

  /** Equalisers of plans without a processor's rate are designed for this one, Hz. */
  private static final double USUAL_RATE_HZ = 48_000;

  private final List<AnalogFilter> analog = new ArrayList<>();
  private final DoubleUnaryOperator lossDb;
  private final Cascade equaliser;
  private final double rateHz;
  private final List<Double> middlesHz;
  private final Phasor[] onGrid;
  private boolean highPassed;

  private FilterChain(VehiclePlan plan, PlannedChannel channel, Grid grid) {
    add(channel.highPass(), channel.lowPass());
    FactorySignal factory = plan.factorySignal();
    if (factory != null) {
      factory.outputs().stream()
          .filter(output -> output.id().equals(channel.factoryOutput()))
          .forEach(output -> add(output.highPass(), output.lowPass()));
    }
    lossDb =
        factory == null || factory.bassLoss() == null ? null : LevelAt.curve(factory.bassLoss());
    rateHz = rateHz(plan);
    middlesHz = channel.equaliser().stream().map(ParametricFilter::frequencyHz).toList();
    List<Biquad> sections = new ArrayList<>();
    for (ParametricFilter filter : channel.equaliser()) {
      sections.add(
          filter
              .kind()
              .design(
                  filter.frequencyHz(),
                  filter.q() == null ? 1 : filter.q(),
                  filter.gainDb() == null ? 0 : filter.gainDb(),
                  rateHz));
    }
    equaliser = sections.isEmpty() ? null : Cascade.of(sections);
    onGrid = new Phasor[grid.size()];
    Arrays.setAll(onGrid, k -> at(grid.hz(k)));
  }

  public static FilterChain of(VehiclePlan plan, PlannedChannel channel, Grid grid) {
    return new FilterChain(plan, channel, grid);
  }

  /** The sampling rate that equalisers of a plan are designed for, Hz. */
  public static double rateHz(VehiclePlan plan) {
    return plan.processor() == null ? USUAL_RATE_HZ : plan.processor().rateHz();
  }

  private void add(Filter highPass, Filter lowPass) {
    if (highPass != null) {
      analog.add(highPass.highPass());
      highPassed = true;
    }
    if (lowPass != null) {
      analog.add(lowPass.lowPass());
    }
  }

  /** Whether a high-pass is among them. */
  boolean highPassed() {
    return highPassed;
  }

  /**
   * Most that they lift, as a ratio; below 1 where they only take away. An equaliser does most at the
   * middles of its filters, however narrow.
   */
  double boost() {
    double most = 0;
    for (Phasor ratio : onGrid) {
      most = Math.max(most, ratio.square());
    }
    for (double middle : middlesHz) {
      most = Math.max(most, at(middle).square());
    }
    return Math.sqrt(most);
  }

  /** Output over input at a frequency of the grid. */
  Phasor onGrid(int k) {
    return onGrid[k];
  }

  /** Output over input at a frequency in Hz. */
  Phasor at(double f) {
    Phasor ratio =
        lossDb == null ? null : new Phasor(Math.pow(10, lossDb.applyAsDouble(f) / 20), 0);
    for (AnalogFilter filter : analog) {
      ratio = ratio == null ? filter.at(f) : ratio.times(filter.at(f));
    }
    if (equaliser != null) {
      Phasor gain = equaliser.at(CirclePoint.of(f, rateHz)).gain();
      ratio = ratio == null ? gain : ratio.times(gain);
    }
    return ratio == null ? Phasor.ONE : ratio;
  }
}
