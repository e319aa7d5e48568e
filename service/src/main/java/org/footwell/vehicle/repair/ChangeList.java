package org.footwell.vehicle.repair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.PlanReviewResult;
import org.footwell.vehicle.repair.PlanRepairResult.Trouble;

/** The changes that may help against the troubles of a plan: those of the parts they are about. */
final class ChangeList {

  private final PlanIndex index;
  private final VehiclePlan plan;
  private final List<Change> all = new ArrayList<>();
  private final Set<Integer> channels = new TreeSet<>();
  private final Set<Integer> amplifiers = new TreeSet<>();

  ChangeList(PlanIndex index, PlanReviewResult review, Iterable<Trouble> troubles) {
    this.index = index;
    this.plan = index.plan();
    troubles.forEach(trouble -> about(trouble.place()));
    FilterChanges filters = new FilterChanges(index, all);
    ChannelChanges wires = new ChannelChanges(index, all);
    FeedChanges feeds = new FeedChanges(plan, review, all);
    // Inverted wires are rather put right than all others inverted.
    channels.stream()
        .sorted(Comparator.comparing(c -> plan.channels().get(c).polarity()))
        .forEach(wires::polarity);
    channels.forEach(wires::settings);
    for (int c : channels) {
      filters.crossovers(c);
      filters.filters(c);
      wires.guardedFromHz(c).ifPresent(hz -> filters.newHighPass(c, hz));
      wires.limiter(c);
      wires.networks(c);
      wires.capacitors(c);
      wires.parts(c);
    }
    amplifiers.forEach(feeds::of);
  }

  /** Channels and amplifiers that a place belongs to; a supply as a whole belongs to all. */
  private void about(String place) {
    String[] steps = place.split("/", -1);
    int at = steps.length > 2 && steps[2].matches("[0-9]+") ? Integer.parseInt(steps[2]) : -1;
    String list = steps.length > 1 ? steps[1] : "";
    switch (at < 0 ? "" : list) {
      case "channels" -> channel(at);
      case "drivers" -> channel(index.channelOf(at));
      case "amplifiers" -> {
        amplifiers.add(at);
        index.channelsOf(at).forEach(this::channel);
      }
      case "crossovers" -> {
        channel(index.channel(plan.crossovers().get(at).lower()));
        channel(index.channel(plan.crossovers().get(at).upper()));
      }
      case "settings" -> channel(index.channel(plan.settings().get(at).channel()));
      default -> {
        IntStream.range(0, plan.channels().size()).forEach(this::channel);
        IntStream.range(0, plan.amplifiers().size()).forEach(amplifiers::add);
      }
    }
  }

  /** With the lower channels that it meets, for their crossover moves with it. */
  private void channel(int c) {
    if (c < 0) {
      return;
    }
    channels.add(c);
    amplifiers.add(index.amplifierOf(c));
    String id = plan.channels().get(c).id();
    plan.crossovers().stream()
        .filter(crossover -> crossover.upper().equals(id))
        .forEach(crossover -> channels.add(index.channel(crossover.lower())));
  }

  List<Change> all() {
    return all;
  }
}
