package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
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

  static Fillings of(SlotLayout layout, SlotLayout.Slot slot) {
    List<Filling> all = new ArrayList<>();
    if (slot.mayStay()) {
      wired(slot, layout.index().part(slot.drivers().get(0)), null, true, all);
    }
    int tooLarge = 0;
    List<OfferedDriver> drivers =
        SlotLayout.suiting(slot.role(), layout.request().offer()).stream()
            .sorted(Comparator.comparing(OfferedDriver::id))
            .toList();
    for (OfferedDriver driver : slot.kept() ? List.<OfferedDriver>of() : drivers) {
      int before = all.size();
      offered(layout, slot, driver, all);
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
      SlotLayout layout, SlotLayout.Slot slot, OfferedDriver driver, List<Filling> into) {
    for (DriverOpening opening : openings(layout, slot)) {
      if (!fits(driver, opening.cutOutMm(), opening.depthMm())) {
        return;
      }
    }
    if (slot.given().room() == null) {
      wired(slot, driver.part(), null, false, into);
      return;
    }
    layout.request().offer().boxes().stream()
        .sorted(Comparator.comparing(OfferedBox::id))
        .filter(box -> suits(box, slot.given()))
        .filter(box -> fits(driver, box.cutOutMm(), box.depthMm()))
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

  /** Whether a box goes into a slot that has room for one, and holds its drivers, several of it all. */
  static boolean suits(OfferedBox box, FreeSlot slot) {
    return box.size().fitsInto(slot.room()) && slot.drivers().size() % box.driverCount() == 0;
  }

  private static boolean fits(OfferedDriver driver, double cutOutMm, double depthMm) {
    return driver.part().cutOutMm() <= cutOutMm && driver.part().mountingDepthMm() <= depthMm;
  }
}
