package org.footwell.vehicle.packages;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.packages.SlotLayout.Site;

/** New networks can be written for what is put into a slot. */
@Check.Of(
    value = {
      "plan.drivers.*.id",
      "plan.drivers.*.part",
      "plan.new_parts.*.id",
      "plan.new_parts.*.coil_count",
      "plan.channels.*.id",
      "plan.channels.*.network",
      "plan.channels.*.branches.*.network",
      "slots.*.drivers"
    },
    says =
        "The drivers of a slot are each on a channel of the plan, alone or with others of the slot in"
            + " a network without resistors.")
final class SlotsWithNetworks implements Check<PackageOptionsRequest> {

  @Override
  public void check(PackageOptionsRequest q, Refusing to) {
    // That a network names what is not there is told by another.
    PlanIndex.knownCoils(q.plan())
        .map(coils -> SlotLayout.sites(q.plan(), coils::get))
        .ifPresent(
            sites -> {
              for (int s = 0; s < q.slots().size(); s++) {
                List<String> ids = q.slots().get(s).drivers();
                check(ids, q.plan(), sites, "/slots/" + s + "/drivers", to);
              }
            });
  }

  private static void check(
      List<String> ids, VehiclePlan plan, List<Site> sites, String at, Refusing to) {
    List<Integer> drivers = SlotLayout.drivers(ids, plan);
    for (int d = 0; d < drivers.size(); d++) {
      int driver = drivers.get(d);
      if (driver >= 0 && sites.stream().noneMatch(site -> site.drivers().contains(driver))) {
        to.refuse(PackageFault.SLOT_NOT_ON_A_CHANNEL).at(at + "/" + d).given(ids.get(d));
      }
    }
    for (Site site : SlotLayout.own(drivers, sites)) {
      if (!drivers.containsAll(site.drivers()) || holdsResistor(site.network(plan))) {
        to.refuse(PackageFault.SLOT_SHARES_A_NETWORK)
            .at(at)
            .given(site.network(plan))
            .own("channel", plan.channels().get(site.channel()).id());
      }
    }
  }

  private static boolean holdsResistor(String network) {
    return network.matches("(?s)(.*[\\s(+|])?[0-9].*");
  }
}
