package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.footwell.parts.WayRole;
import org.footwell.parts.offer.Offer;
import org.footwell.parts.offer.OfferedDriver;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.parts.plan.VehiclePlan;

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
  record Site(int channel, int branch, List<Integer> drivers) {

    /** How it is written in a plan. */
    String network(VehiclePlan plan) {
      PlannedChannel there = plan.channels().get(channel);
      return branch < 0 ? there.network() : there.branches().get(branch).network();
    }
  }

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

  static SlotLayout of(PackageOptionsRequest q, PlanIndex index) {
    List<Site> sites = sites(index.plan(), index::coils);
    List<Slot> slots =
        IntStream.range(0, q.slots().size())
            .mapToObj(s -> slot(s, q, index.plan(), sites))
            .toList();
    List<Unit> units = units(slots);
    List<Integer> fixed =
        IntStream.range(0, index.plan().channels().size())
            .filter(c -> units.stream().noneMatch(unit -> unit.channels().contains(c)))
            .boxed()
            .toList();
    return new SlotLayout(q, index, slots, units, fixed);
  }

  /** Drivers by their index in the plan, −1 for one that is not there. */
  static List<Integer> drivers(List<String> ids, VehiclePlan plan) {
    List<String> known = plan.drivers().stream().map(PlacedDriver::id).toList();
    return ids.stream().map(known::indexOf).toList();
  }

  /** What the drivers of a slot are used as, by the first that says it; null where none does. */
  static WayRole role(FreeSlot slot, VehiclePlan plan) {
    return drivers(slot.drivers(), plan).stream()
        .filter(driver -> driver >= 0)
        .map(driver -> role(plan.drivers().get(driver), plan))
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  private static WayRole role(PlacedDriver driver, VehiclePlan plan) {
    return driver.role() != null
        ? driver.role()
        : plan.newParts().stream()
            .filter(part -> part.id().equals(driver.part()))
            .findFirst()
            .map(PlannedPart::role)
            .orElse(null);
  }

  /** What is offered for a role, or all there is for none. */
  static List<OfferedDriver> suiting(WayRole role, Offer offer) {
    return offer.drivers().stream()
        .filter(driver -> role == null || driver.part().role() == role)
        .toList();
  }

  /** Ids of the parts that are in positions, each once. */
  static List<String> parts(List<Integer> drivers, VehiclePlan plan) {
    return drivers.stream()
        .filter(driver -> driver >= 0)
        .map(driver -> plan.drivers().get(driver).part())
        .distinct()
        .toList();
  }

  /**
   * All networks of a plan.
   *
   * @param coils of each of its channels
   */
  static List<Site> sites(VehiclePlan plan, IntFunction<List<PlanIndex.NamedCoil>> coils) {
    List<Site> sites = new ArrayList<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      boolean whole = plan.channels().get(c).network() != null;
      int branches = whole ? 0 : plan.channels().get(c).branchList().size();
      for (int b = whole ? -1 : 0; b < branches; b++) {
        int branch = b;
        List<Integer> drivers =
            coils.apply(c).stream()
                .filter(coil -> coil.branch() == branch)
                .map(PlanIndex.NamedCoil::driver)
                .distinct()
                .toList();
        sites.add(new Site(c, b, drivers));
      }
    }
    return sites;
  }

  /** The networks that some drivers are in. */
  static List<Site> own(List<Integer> drivers, List<Site> sites) {
    return sites.stream()
        .filter(site -> site.drivers().stream().anyMatch(drivers::contains))
        .toList();
  }

  private static Slot slot(int s, PackageOptionsRequest q, VehiclePlan plan, List<Site> sites) {
    FreeSlot given = q.slots().get(s);
    List<Integer> drivers = drivers(given.drivers(), plan);
    boolean alike = parts(drivers, plan).size() == 1;
    return new Slot(
        s, given, role(given, plan), drivers, own(drivers, sites), q.keeps(given), alike);
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
