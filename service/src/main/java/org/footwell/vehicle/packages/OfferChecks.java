package org.footwell.vehicle.packages;

import java.util.List;
import java.util.function.Function;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.Driver;
import org.footwell.parts.WayRole;
import org.footwell.parts.offer.OfferedDriver;
import org.footwell.parts.plan.PlanIndex;

/** What the declared rules of an offer cannot say: what it lacks for the plan. */
final class OfferChecks {

  private final PackageOptionsRequest q;
  private final PlanIndex index;
  private final Run run;

  OfferChecks(PackageOptionsRequest q, PlanIndex index, Run run) {
    this.q = q;
    this.index = index;
    this.run = run;
  }

  void check() {
    for (int s = 0; s < q.slots().size(); s++) {
      slot(s);
    }
  }

  private void slot(int s) {
    FreeSlot slot = q.slots().get(s);
    List<String> ids = index.plan().drivers().stream().map(driver -> driver.id()).toList();
    WayRole role = SlotLayout.role(slot.drivers().stream().map(ids::indexOf).toList(), index);
    boolean kept = q.wishes().keep().contains(slot.name());
    List<OfferedDriver> suiting =
        q.offer().drivers().stream()
            .filter(driver -> role == null || driver.part().role() == role)
            .toList();
    if (suiting.isEmpty() && !kept && !slot.mayStay()) {
      run.refuse(PackageFault.NOTHING_OFFERED_FOR_SLOT)
          .at("/slots/" + s)
          .given(slot.name())
          .with("role", role == null ? Phrase.nothing() : used(role));
    }
    if (slot.room() != null && !kept) {
      suiting.forEach(this::boxed);
    }
  }

  private static Phrase used(WayRole role) {
    return Phrase.of(OfferWords.USED_AS).field("role", Names.of(role));
  }

  /** What a driver makes of a box is known by its circuit only. */
  private void boxed(OfferedDriver driver) {
    String at = "/offer/drivers/" + q.offer().drivers().indexOf(driver) + "/part/driver/";
    Driver data = driver.part().driver();
    lacking("re_ohm", data, Driver::reOhm, at);
    lacking("qms", data, Driver::qms, at);
    lacking("qes", data, Driver::qes, at);
    lacking("vas_l", data, Driver::vasL, at);
  }

  private void lacking(String field, Driver driver, Function<Driver, Double> value, String at) {
    if (value.apply(driver) == null) {
      run.refuse(CoreFault.REQUIRED).at(at + field);
    }
  }
}
