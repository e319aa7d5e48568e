package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.parts.offer.OfferedBox;
import org.footwell.parts.plan.PlannedPart;

/**
 * What may be in a slot.
 *
 * @param part in each of its positions
 * @param box each of its drivers, or several together, come in; null where the enclosure of the plan stays
 * @param stays whether the part is that of the plan
 * @param inSeries how many voice coils are in series in each of its networks; all others are in parallel to these
 */
record Filling(
    SlotLayout.Slot slot, PlannedPart part, OfferedBox box, boolean stays, int inSeries) {

  /** How many boxes it takes. */
  int boxCount() {
    return box == null ? 0 : slot.drivers().size() / box.driverCount();
  }

  PackageFigures cost() {
    int count = slot.drivers().size();
    long price = count * Prices.of(part.driver().price());
    double mass = count * part.driver().massG();
    if (box != null) {
      price += boxCount() * Prices.of(box.price());
      mass += boxCount() * box.massG();
    }
    return PackageFigures.cost(price, mass);
  }

  /**
   * The network at a place: strings of so many coils in series, in parallel. With all coils alike every
   * network that shares evenly is electrically one of these.
   *
   * @param ids of its drivers
   */
  static String network(List<String> ids, int coilCount, int inSeries) {
    List<String> coils = new ArrayList<>();
    for (String id : ids) {
      IntStream.rangeClosed(1, coilCount)
          .forEach(n -> coils.add(coilCount == 1 ? id : id + "." + n));
    }
    List<String> strings = new ArrayList<>();
    for (int from = 0; from < coils.size(); from += inSeries) {
      String row = String.join(" + ", coils.subList(from, from + inSeries));
      strings.add(inSeries == 1 || inSeries == coils.size() ? row : "(" + row + ")");
    }
    return String.join(" || ", strings);
  }

  /** All numbers of coils in series that suit every network of a slot. */
  static List<Integer> wirings(SlotLayout.Slot slot, int coilCount) {
    int fewest =
        slot.sites().stream().mapToInt(site -> site.drivers().size() * coilCount).min().orElse(1);
    return IntStream.rangeClosed(1, fewest)
        .filter(
            inSeries ->
                slot.sites().stream()
                    .allMatch(site -> site.drivers().size() * coilCount % inSeries == 0))
        .boxed()
        .toList();
  }
}
