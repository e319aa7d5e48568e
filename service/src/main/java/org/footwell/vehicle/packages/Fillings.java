package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.parts.Driver;
import org.footwell.parts.offer.OfferedBox;
import org.footwell.parts.offer.OfferedDriver;
import org.footwell.parts.plan.DriverOpening;
import org.footwell.parts.plan.PlannedPart;

/**
 * Everything of the offer that fits a slot, whatever drives it; sorted, so that the order of the offer
 * does not matter.
 *
 * @param all choices
 * @param tooLarge offered drivers of the role that fit nowhere
 */
record Fillings(List<Filling> all, int tooLarge) {

  static Fillings of(SlotLayout layout, SlotLayout.Slot slot, Run run) {
    List<Filling> all = new ArrayList<>();
    if (slot.mayStay()) {
      int partOfPlan = layout.index().partOf(slot.drivers().get(0));
      PlannedPart part = layout.index().plan().newParts().get(partOfPlan);
      requireKnown(part.driver(), "/plan/new_parts/" + partOfPlan + "/driver", run);
      wired(slot, part, null, true, all);
    }
    int tooLarge = 0;
    List<OfferedDriver> drivers =
        layout.request().offer().drivers().stream()
            .filter(driver -> slot.role() == null || driver.part().role() == slot.role())
            .sorted(Comparator.comparing(OfferedDriver::id))
            .toList();
    for (OfferedDriver driver : slot.kept() ? List.<OfferedDriver>of() : drivers) {
      int before = all.size();
      offered(layout, slot, driver, all, run);
      tooLarge += all.size() == before ? 1 : 0;
    }
    return new Fillings(all, tooLarge);
  }

  /** Choices of driver and box, however they are wired. */
  int partCount() {
    return (int)
        all.stream()
            .map(
                one ->
                    List.of(one.part().id(), one.box() == null ? "" : one.box().id(), one.stays()))
            .distinct()
            .count();
  }

  private static void offered(
      SlotLayout layout, SlotLayout.Slot slot, OfferedDriver driver, List<Filling> into, Run run) {
    for (DriverOpening opening : openings(layout, slot)) {
      if (!fits(driver, opening.cutOutMm(), opening.depthMm(), layout, run)) {
        return;
      }
    }
    if (slot.given().room() == null) {
      wired(slot, driver.part(), null, false, into);
      return;
    }
    layout.request().offer().boxes().stream()
        .sorted(Comparator.comparing(OfferedBox::id))
        .filter(box -> box.size().fitsInto(slot.given().room()))
        .filter(box -> slot.drivers().size() % box.driverCount() == 0)
        .filter(box -> fits(driver, box.cutOutMm(), box.depthMm(), layout, run))
        .forEach(box -> wired(slot, driver.part(), box, false, into));
  }

  /** What every driver of the slot must go into: that of the slot, and those of the plan. */
  private static List<DriverOpening> openings(SlotLayout layout, SlotLayout.Slot slot) {
    return Stream.concat(
            Stream.of(slot.given()).map(FreeSlot::opening),
            slot.drivers().stream()
                .map(driver -> layout.index().plan().drivers().get(driver).opening()))
        .filter(Objects::nonNull)
        .distinct()
        .toList();
  }

  private static void wired(
      SlotLayout.Slot slot, PlannedPart part, OfferedBox box, boolean stays, List<Filling> into) {
    for (int inSeries : Filling.wirings(slot, part.coilCount())) {
      into.add(new Filling(slot, part, box, stays, inSeries));
    }
  }

  /** A driver whose size is not known cannot be held against an opening. */
  private static boolean fits(
      OfferedDriver driver, double cutOutMm, double depthMm, SlotLayout layout, Run run) {
    String at = "/offer/drivers/" + layout.request().offer().drivers().indexOf(driver);
    Double itsCutOutMm = driver.part().cutOutMm();
    Double itsDepthMm = driver.part().mountingDepthMm();
    if (itsCutOutMm == null || itsDepthMm == null) {
      require(itsCutOutMm, at + "/part/cut_out_mm", run);
      require(itsDepthMm, at + "/part/mounting_depth_mm", run);
      return false;
    }
    return itsCutOutMm <= cutOutMm && itsDepthMm <= depthMm;
  }

  /** What a part of the plan has to say so that packages with it have figures. */
  static void requireKnown(Driver driver, String at, Run run) {
    require(driver.price(), at + "/price", run);
    require(driver.massG(), at + "/mass_g", run);
    require(driver.sensitivity(), at + "/sensitivity", run);
  }

  static void require(Object given, String at, Run run) {
    if (given == null) {
      run.refuse(CoreFault.REQUIRED).at(at);
    }
  }
}
