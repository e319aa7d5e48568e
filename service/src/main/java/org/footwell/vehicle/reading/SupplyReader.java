package org.footwell.vehicle.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.footwell.electrical.supply.FeedLine;
import org.footwell.parts.plan.AmplifierFeed;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.chain.EngineState;
import org.footwell.vehicle.chain.FedAmplifier;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.chain.PowerSource;

/** Reads what feeds the amplifiers of a plan into the model. */
public final class SupplyReader {

  private final PlanIndex index;
  private final VehiclePlan plan;
  private final List<PlayedChannel> channels;

  SupplyReader(PlanIndex index, List<PlayedChannel> channels) {
    this.index = index;
    this.plan = index.plan();
    this.channels = channels;
  }

  /** The sources of all situations that the plan knows; none without a supply. */
  Map<EngineState, PowerSource> sources() {
    return PlannedFeed.sources(plan.supply());
  }

  /** What is known of the cable of an amplifier: its size as laid or found. */
  public record Laid(FeedLine line, double areaMm2, boolean found) {
    public double loopOhm() {
      return line.loopOhm(areaMm2);
    }
  }

  /** The amplifiers as their supply sees them, each with its cable where there is one. */
  List<FedAmplifier> amplifiers() {
    List<FedAmplifier> fed = new ArrayList<>();
    for (int a = 0; a < plan.amplifiers().size(); a++) {
      PlannedAmplifier amplifier = plan.amplifiers().get(a);
      Laid laid = laid(a);
      fed.add(PlannedFeed.drawn(amplifier, laid == null ? 0 : laid.loopOhm()));
    }
    return fed;
  }

  /** The cable of an amplifier; null where the plan has none, or not what it draws. */
  public Laid laid(int a) {
    PlannedAmplifier amplifier = plan.amplifiers().get(a);
    AmplifierFeed feed = amplifier.feed();
    if (feed == null || amplifier.draw() == null || plan.supply() == null) {
      return null;
    }
    FeedLine line = PlannedFeed.line(feed, PlannedFeed.startV(plan.supply()), thirdW(a));
    if (feed.cable().areaMm2() != null) {
      return new Laid(line, feed.cable().areaMm2(), false);
    }
    OptionalDouble smallest = line.smallestMm2();
    return smallest.isPresent() ? new Laid(line, smallest.getAsDouble(), true) : null;
  }

  /** Current of music at a third of full power, A: what cable and fuse are for. */
  public double thirdA(int a) {
    Laid laid = laid(a);
    return laid.line().currentA(laid.areaMm2());
  }

  /** What its cable is sized for, W. */
  private double thirdW(int a) {
    PlannedAmplifier amplifier = plan.amplifiers().get(a);
    double rated = PlannedSource.ratedV(amplifier);
    double clean = 0;
    for (int c : index.channelsOf(a)) {
      clean += channels.get(c).chain().output().cleanW(rated);
    }
    return PlannedFeed.drawn(amplifier, 0).thirdW(clean);
  }
}
