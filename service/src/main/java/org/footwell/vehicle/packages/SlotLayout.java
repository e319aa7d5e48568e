package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.footwell.calculation.Run;
import org.footwell.parts.WayRole;
import org.footwell.parts.plan.PlanIndex;

/**
 * Where the slots of a request are in its plan.
 *
 * @param slots in the order of the request
 * @param units slots that share channels, together with these
 * @param fixedChannels those without a driver of a slot
 */
record SlotLayout(
    PackageOptionsRequest request,
    PlanIndex index,
    List<Slot> slots,
    List<Unit> units,
    List<Integer> fixedChannels) {

  /**
   * A network of voice coils.
   *
   * @param branch of a passive crossover, or −1
   * @param drivers in its order
   */
  record Site(int channel, int branch, List<Integer> drivers) {}

  /**
   * A slot.
   *
   * @param drivers by their index in the plan
   * @param sites the networks its drivers are in
   * @param kept whether its part has to stay
   * @param alike whether the same part is in all its positions, so that it can stay
   */
  record Slot(
      int index,
      FreeSlot given,
      WayRole role,
      List<Integer> drivers,
      List<Site> sites,
      boolean kept,
      boolean alike) {

    /** Whether what is in it is one of the choices. */
    boolean mayStay() {
      return alike && (kept || given.mayStay());
    }
  }

  /** Slots that share channels. */
  record Unit(List<Slot> slots, List<Integer> channels) {}

  /** Refuses slots that are on no channel, or share a network with what stays or another slot. */
  static SlotLayout of(PackageOptionsRequest q, PlanIndex index, Run run) {
    List<Site> sites = sites(index);
    List<Slot> slots = new ArrayList<>();
    for (int s = 0; s < q.slots().size(); s++) {
      slots.add(slot(s, q, index, sites, run));
    }
    run.requireNoFaults();
    List<Unit> units = units(slots);
    List<Integer> fixed =
        IntStream.range(0, index.plan().channels().size())
            .filter(c -> units.stream().noneMatch(unit -> unit.channels().contains(c)))
            .boxed()
            .toList();
    return new SlotLayout(q, index, slots, units, fixed);
  }

  /** What its drivers are used as, by the first that says it; null where none does. */
  static WayRole role(List<Integer> drivers, PlanIndex index) {
    return drivers.stream().map(index::roleOf).filter(Objects::nonNull).findFirst().orElse(null);
  }

  private static List<Site> sites(PlanIndex index) {
    List<Site> sites = new ArrayList<>();
    for (int c = 0; c < index.plan().channels().size(); c++) {
      int branches = index.plan().channels().get(c).branchList().size();
      for (int b = branches == 0 ? -1 : 0; b < branches; b++) {
        int branch = b;
        List<Integer> drivers =
            index.coils(c).stream()
                .filter(coil -> coil.branch() == branch)
                .map(PlanIndex.NamedCoil::driver)
                .distinct()
                .toList();
        sites.add(new Site(c, b, drivers));
      }
    }
    return sites;
  }

  private static Slot slot(
      int s, PackageOptionsRequest q, PlanIndex index, List<Site> sites, Run run) {
    FreeSlot given = q.slots().get(s);
    List<String> ids = index.plan().drivers().stream().map(driver -> driver.id()).toList();
    List<Integer> drivers = given.drivers().stream().map(ids::indexOf).toList();
    List<Site> own =
        sites.stream().filter(site -> site.drivers().stream().anyMatch(drivers::contains)).toList();
    for (int d = 0; d < drivers.size(); d++) {
      if (index.channelOf(drivers.get(d)) < 0) {
        run.refuse(PackageFault.SLOT_NOT_ON_A_CHANNEL)
            .at("/slots/" + s + "/drivers/" + d)
            .given(given.drivers().get(d));
      }
    }
    for (Site site : own) {
      if (!drivers.containsAll(site.drivers()) || holdsResistor(index, site)) {
        run.refuse(PackageFault.SLOT_SHARES_A_NETWORK)
            .at("/slots/" + s + "/drivers")
            .given(network(index, site))
            .own("channel", index.plan().channels().get(site.channel()).id());
      }
    }
    List<String> parts = parts(drivers, index);
    boolean kept = q.wishes().keep().contains(given.name());
    if (kept && parts.size() > 1) {
      run.refuse(PackageFault.KEPT_PARTS_UNLIKE)
          .at("/slots/" + s + "/drivers")
          .given(given.name())
          .own("parts", parts);
    }
    return new Slot(s, given, role(drivers, index), drivers, own, kept, parts.size() == 1);
  }

  /** Ids of the parts that are in positions, each once; none of a position that is not there. */
  private static List<String> parts(List<Integer> drivers, PlanIndex index) {
    return drivers.stream().map(d -> index.part(d).id()).distinct().toList();
  }

  static String network(PlanIndex index, Site site) {
    return site.branch() < 0
        ? index.plan().channels().get(site.channel()).network()
        : index.plan().channels().get(site.channel()).branches().get(site.branch()).network();
  }

  private static boolean holdsResistor(PlanIndex index, Site site) {
    return network(index, site).matches("(?s)(.*[\\s(+|])?[0-9].*");
  }

  private static List<Unit> units(List<Slot> slots) {
    List<Unit> units = new ArrayList<>();
    for (Slot slot : slots) {
      List<Slot> together = new ArrayList<>(List.of(slot));
      TreeSet<Integer> channels = new TreeSet<>();
      slot.sites().forEach(site -> channels.add(site.channel()));
      for (Unit unit : List.copyOf(units)) {
        if (unit.channels().stream().anyMatch(channels::contains)) {
          together.addAll(0, unit.slots());
          channels.addAll(unit.channels());
          units.remove(unit);
        }
      }
      units.add(new Unit(together, List.copyOf(channels)));
    }
    return units;
  }
}
