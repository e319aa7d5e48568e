package org.footwell.vehicle.reading;

import java.util.EnumMap;
import java.util.Map;
import org.footwell.electrical.supply.FeedLine;
import org.footwell.parts.Battery;
import org.footwell.parts.plan.AmplifierFeed;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.VehicleSupply;
import org.footwell.vehicle.chain.EngineState;
import org.footwell.vehicle.chain.FedAmplifier;
import org.footwell.vehicle.chain.PowerSource;

/** What feeds planned amplifiers with current, as the model takes it. */
public final class PlannedFeed {

  private PlannedFeed() {}

  /** The sources of all situations that a plan knows; none without a supply. */
  public static Map<EngineState, PowerSource> sources(VehicleSupply supply) {
    Map<EngineState, PowerSource> sources = new EnumMap<>(EngineState.class);
    if (supply == null) {
      return sources;
    }
    if (supply.alternator() == null) {
      sources.put(EngineState.CRUISING, PowerSource.stiff(supply.batteryV()));
      return sources;
    }
    Battery battery = supply.battery();
    double resting = battery.restingV();
    double inside = battery.internalOhm();
    double held = supply.alternator().voltageV();
    double others = supply.consumers().runningA();
    sources.put(
        EngineState.CRUISING,
        PowerSource.running(held, supply.alternator().cruiseA(), others, resting, inside));
    sources.put(
        EngineState.IDLING,
        PowerSource.running(held, supply.alternator().idleA(), others, resting, inside));
    sources.put(
        EngineState.ENGINE_OFF,
        PowerSource.battery(resting, inside, supply.consumers().engineOffA()));
    return sources;
  }

  /** Voltage at the battery while driving, V. */
  public static double startV(VehicleSupply supply) {
    return supply.alternator() == null ? supply.batteryV() : supply.alternator().voltageV();
  }

  /** An amplifier as its supply sees it; one of which nothing is known draws nothing. */
  public static FedAmplifier drawn(PlannedAmplifier amplifier, double loopOhm) {
    double rated = PlannedSource.ratedV(amplifier);
    PlannedAmplifier.Draw draw = amplifier.draw();
    return draw == null
        ? FedAmplifier.unknown(rated)
        : new FedAmplifier(
            draw.idleA() * rated,
            draw.averageEfficiency(),
            draw.fullEfficiency(),
            amplifier.supplyRegulated(),
            rated,
            loopOhm);
  }

  /** The supply cable of an amplifier that draws so many watts. */
  public static FeedLine line(AmplifierFeed feed, double startV, double inputW) {
    return FeedLine.of(
        feed.cable(),
        feed.returnPath(),
        feed.contactsOhm() + (feed.bodyOhm() == null ? 0 : feed.bodyOhm()),
        feed.permittedDropV(),
        startV,
        inputW);
  }
}
