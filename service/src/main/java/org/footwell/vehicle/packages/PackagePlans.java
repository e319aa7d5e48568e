package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.parts.plan.Branch;
import org.footwell.parts.plan.BranchBuilder;
import org.footwell.parts.plan.Extra;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlacedDriverBuilder;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.PlannedAmplifierBuilder;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.PlannedChannelBuilder;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.parts.plan.SoundTarget;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.parts.plan.VehiclePlanBuilder;

/** Puts plans together from the one of the request and what is chosen. */
final class PackagePlans {

  private PackagePlans() {}

  /** A plan to read channels from: filled, on the outputs it has; only seats that count are looked at. */
  static VehiclePlan toRead(SlotLayout layout, List<Filling> filled) {
    VehiclePlan plan = layout.index().plan();
    boolean mainOnly = plan.target().seats() == SoundTarget.Seats.MAIN;
    return VehiclePlanBuilder.builder(plan)
        .seats(mainOnly ? List.of(plan.seats().get(plan.mainSeat())) : plan.seats())
        .newParts(parts(plan, filled))
        .drivers(drivers(layout, filled))
        .channels(channels(layout, filled))
        .settings(null)
        .measured(null)
        .measuredSupply(null)
        .build();
  }

  /** A package as a whole plan. */
  static VehiclePlan of(SlotLayout layout, FoundPackage found) {
    VehiclePlan plan = layout.index().plan();
    List<Filling> filled =
        found.choices().stream().flatMap(choice -> choice.fillings().stream()).toList();
    List<PlannedChannel> channels = channels(layout, filled);
    Map<Integer, String> names = names(found, plan);
    Map<Integer, List<List<String>>> free = new LinkedHashMap<>();
    for (int i = 0; i < found.amplifiers().size(); i++) {
      free.put(i, copy(found.amplifiers().get(i).amplifier().free()));
    }
    for (int u = 0; u < found.choices().size(); u++) {
      OutputKind kind = found.choices().get(u).kind();
      int amplifier = found.amplifierOf().get(u);
      List<String> left = free.get(amplifier).get(kind.outputs());
      for (int c : found.units().get(u).channels()) {
        List<String> taken = List.copyOf(left.subList(0, kind.perChannel()));
        left.subList(0, kind.perChannel()).clear();
        channels.set(
            c,
            PlannedChannelBuilder.builder(channels.get(c))
                .amplifier(names.get(amplifier))
                .outputs(taken)
                .build());
      }
    }
    List<Extra> extras = new ArrayList<>(plan.extras());
    List<PlannedAmplifier> amplifiers = new ArrayList<>();
    for (int i = 0; i < found.amplifiers().size(); i++) {
      FoundPackage.Fed fed = found.amplifiers().get(i);
      amplifiers.add(
          PlannedAmplifierBuilder.builder(fed.amplifier().planned())
              .id(names.get(i))
              .feed(fed.feed().feed())
              .build());
      extras.addAll(fed.feed().bought());
    }
    for (Filling one : filled) {
      if (one.box() != null) {
        String name = one.box().name() == null ? one.box().id() : one.box().name();
        extras.add(new Extra(name, one.boxCount(), one.box().price(), one.box().massG()));
      }
    }
    return VehiclePlanBuilder.builder(plan)
        .newParts(parts(plan, filled))
        .drivers(drivers(layout, filled))
        .amplifiers(amplifiers)
        .channels(channels)
        .extras(extras)
        .settings(null)
        .measured(null)
        .measuredSupply(null)
        .build();
  }

  private static List<List<String>> copy(List<List<String>> lists) {
    List<List<String>> copy = new ArrayList<>();
    lists.forEach(one -> copy.add(new ArrayList<>(one)));
    return copy;
  }

  /** What each amplifier is called: the second of a kind gets a number. */
  static Map<Integer, String> names(FoundPackage found, VehiclePlan plan) {
    Map<Integer, String> names = new LinkedHashMap<>();
    Set<String> used = new HashSet<>(plan.amplifiers().stream().map(one -> one.id()).toList());
    for (int i = 0; i < found.amplifiers().size(); i++) {
      AmplifierChoice amplifier = found.amplifiers().get(i).amplifier();
      String name = amplifier.planned().id();
      for (int n = 2; amplifier.isNew() && !used.add(name); n++) {
        name = amplifier.planned().id() + "_" + n;
      }
      names.put(i, name);
    }
    return names;
  }

  private static Filling of(List<Filling> filled, int driver) {
    return filled.stream()
        .filter(one -> one.slot().drivers().contains(driver))
        .findFirst()
        .orElse(null);
  }

  /** Parts of the plan that are used still, then those chosen, each once. */
  private static List<PlannedPart> parts(VehiclePlan plan, List<Filling> filled) {
    List<PlannedPart> parts = new ArrayList<>();
    Set<String> placed = new HashSet<>();
    for (int d = 0; d < plan.drivers().size(); d++) {
      Filling one = of(filled, d);
      placed.add(one == null || one.stays() ? plan.drivers().get(d).part() : "");
    }
    plan.newParts().stream().filter(part -> placed.contains(part.id())).forEach(parts::add);
    filled.stream().filter(one -> !one.stays()).map(Filling::part).distinct().forEach(parts::add);
    return parts;
  }

  private static List<PlacedDriver> drivers(SlotLayout layout, List<Filling> filled) {
    List<PlacedDriver> drivers = new ArrayList<>(layout.index().plan().drivers());
    for (int d = 0; d < drivers.size(); d++) {
      Filling one = of(filled, d);
      if (one != null && !one.stays()) {
        PlacedDriver driver = drivers.get(d);
        drivers.set(
            d,
            PlacedDriverBuilder.builder(driver)
                .part(one.part().id())
                .enclosure(one.box() == null ? driver.enclosure() : one.box().enclosure())
                .build());
      }
    }
    return drivers;
  }

  private static List<PlannedChannel> channels(SlotLayout layout, List<Filling> filled) {
    List<PlannedChannel> channels = new ArrayList<>(layout.index().plan().channels());
    for (Filling one : filled) {
      for (SlotLayout.Site site : one.slot().sites()) {
        PlannedChannel channel = channels.get(site.channel());
        List<String> ids =
            site.drivers().stream().map(d -> layout.index().plan().drivers().get(d).id()).toList();
        String network = Filling.network(ids, one.part().coilCount(), one.inSeries());
        channels.set(site.channel(), wired(channel, site.branch(), network));
      }
    }
    return channels;
  }

  private static PlannedChannel wired(PlannedChannel channel, int branch, String network) {
    if (branch < 0) {
      return PlannedChannelBuilder.builder(channel).network(network).build();
    }
    List<Branch> branches = new ArrayList<>(channel.branches());
    branches.set(branch, BranchBuilder.builder(branches.get(branch)).network(network).build());
    return PlannedChannelBuilder.builder(channel).branches(branches).build();
  }
}
