package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.footwell.parts.plan.AmplifierFeed;
import org.footwell.vehicle.chain.EngineState;
import org.footwell.vehicle.chain.FedAmplifier;
import org.footwell.vehicle.chain.PowerSource;
import org.footwell.vehicle.reading.PlannedFeed;

/** Whether the vehicle feeds amplifiers, and by which cables and fuses. */
final class Feeding {

  private final SlotLayout layout;
  private final Map<EngineState, PowerSource> sources;
  private final Map<Integer, Map<Double, List<FeedChoice>>> known = new HashMap<>();
  private final Map<Integer, Double> fixedCleanW;

  Feeding(SlotLayout layout, Map<Integer, Double> fixedCleanW) {
    this.layout = layout;
    this.fixedCleanW = fixedCleanW;
    sources = PlannedFeed.sources(layout.index().plan().supply());
  }

  /** Clean power of the channels that stay on an amplifier, at its rated supply voltage, W. */
  double fixedCleanW(AmplifierChoice amplifier) {
    return fixedCleanW.getOrDefault(amplifier.number(), 0.0);
  }

  /** Every way to feed amplifiers of which the supply bears all; none where it bears none. */
  List<List<FoundPackage.Fed>> ways(List<OpenAmplifier> open) {
    List<List<FoundPackage.Fed>> ways = List.of(List.of());
    for (OpenAmplifier amplifier : open) {
      List<List<FoundPackage.Fed>> longer = new ArrayList<>();
      for (List<FoundPackage.Fed> soFar : ways) {
        for (FeedChoice feed : feeds(amplifier)) {
          List<FoundPackage.Fed> with = new ArrayList<>(soFar);
          with.add(new FoundPackage.Fed(amplifier.amplifier(), feed));
          longer.add(with);
        }
      }
      ways = longer;
    }
    return ways.stream().filter(way -> borne(open, way)).toList();
  }

  private List<FeedChoice> feeds(OpenAmplifier open) {
    return known
        .computeIfAbsent(open.amplifier().number(), any -> new HashMap<>())
        .computeIfAbsent(
            open.cleanW(),
            clean -> FeedChoice.of(layout.request(), open.amplifier().planned(), way(open), clean));
  }

  private AmplifierFeed way(OpenAmplifier open) {
    PackageOptionsRequest.AmplifierPlace place = layout.request().amplifierPlace();
    if (!open.amplifier().isNew()) {
      return open.amplifier().planned().feed();
    }
    return place == null ? null : place.feed();
  }

  /**
   * Whether there is a voltage at which all get what they draw with music at a third of full power, and
   * none switches off.
   */
  private boolean borne(List<OpenAmplifier> open, List<FoundPackage.Fed> way) {
    PowerSource.Load[] loads = new PowerSource.Load[open.size()];
    for (int i = 0; i < loads.length; i++) {
      double loop = way.get(i).feed().loopOhm();
      FedAmplifier fed = PlannedFeed.drawn(open.get(i).amplifier().planned(), loop);
      loads[i] = new PowerSource.Load(fed.thirdW(open.get(i).cleanW()), Double.NaN, loop);
    }
    for (PowerSource source : sources.values()) {
      PowerSource.Meeting meeting = source.meet(loads);
      if (meeting == null) {
        return false;
      }
      for (int i = 0; i < loads.length; i++) {
        Double least = open.get(i).amplifier().planned().minimumV();
        if (least != null && meeting.loadV().get(i) < least) {
          return false;
        }
      }
    }
    return true;
  }
}
