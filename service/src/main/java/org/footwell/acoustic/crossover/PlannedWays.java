package org.footwell.acoustic.crossover;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.footwell.loudspeaker.AirBehind;
import org.footwell.parts.Box;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.WayRole;
import org.footwell.parts.plan.ChannelRole;
import org.footwell.parts.plan.Enclosure;
import org.footwell.parts.plan.PlanIndex;

/** The drivers of a plan as ways that hand over to each other. */
public final class PlannedWays {

  private final PlanIndex index;

  public PlannedWays(PlanIndex index) {
    this.index = index;
  }

  /** One driver of each band of a channel, from low to high: by resonance where all have one. */
  public List<Integer> of(int channel) {
    List<Integer> ways = new ArrayList<>();
    List<Integer> bands = new ArrayList<>();
    for (PlanIndex.NamedCoil coil : index.coils(channel)) {
      if (!bands.contains(coil.branch())) {
        bands.add(coil.branch());
        ways.add(coil.driver());
      }
    }
    if (ways.stream().allMatch(driver -> data(driver).fsHz() != null)) {
      ways.sort(Comparator.comparing(driver -> data(driver).fsHz()));
    }
    return ways;
  }

  /** A driver as a way. */
  public CrossoverWay way(int driver) {
    return CrossoverWayBuilder.builder()
        .id(index.plan().drivers().get(driver).id())
        .role(role(driver))
        .driver(joined(driver))
        .fcHz(closedHz(driver))
        .build();
  }

  /** With its voice coils joined as its sensitivity is stated. */
  private Driver joined(int driver) {
    return DriverBuilder.builder(data(driver))
        .ratedOhm(index.part(driver).sensitivityLoadOhm())
        .build();
  }

  private Driver data(int driver) {
    return index.part(driver).driver();
  }

  /** What it is used as; where nothing says it, what its channel is for, or null. */
  private WayRole role(int driver) {
    WayRole own = index.roleOf(driver);
    int channel = index.channelOf(driver);
    return own == null
            && channel >= 0
            && index.plan().channels().get(channel).role() == ChannelRole.SUBWOOFER
        ? WayRole.SUBWOOFER
        : own;
  }

  /** Resonance in its closed box, Hz; null without one or where it cannot be told. */
  private Double closedHz(int driver) {
    Enclosure enclosure = index.plan().drivers().get(driver).enclosure();
    Box box = enclosure == null ? null : enclosure.closed();
    Driver data = data(driver);
    if (box == null || data.vasL() == null || data.fsHz() == null) {
      return null;
    }
    return AirBehind.of(data, box).resonanceHz(data);
  }
}
