package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.footwell.parts.offer.OfferedAmplifier;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedAmplifier;

/**
 * An amplifier that may drive channels: one of the plan, or one that is offered.
 *
 * @param number its place among all
 * @param ofPlan index in the plan, or −1
 * @param free ids of the outputs that no fixed channel uses, by their entry
 * @param fixedChannels those of the plan that stay on it; with any it is in every package
 */
record AmplifierChoice(
    int number,
    PlannedAmplifier planned,
    int ofPlan,
    List<List<String>> free,
    List<Integer> fixedChannels) {

  /** Those of the plan in its order, then those offered that there is room for, by their ids. */
  static List<AmplifierChoice> of(SlotLayout layout) {
    List<AmplifierChoice> all = new ArrayList<>();
    List<PlannedAmplifier> planned = layout.index().plan().amplifiers();
    for (int a = 0; a < planned.size(); a++) {
      all.add(ofPlan(layout, a));
    }
    List<PlannedAmplifier> offered =
        layout.request().offer().amplifiers().stream()
            .sorted(Comparator.comparing(OfferedAmplifier::id))
            .filter(one -> fits(layout.request(), one))
            .map(OfferedAmplifier::amplifier)
            .toList();
    for (PlannedAmplifier one : offered) {
      all.add(new AmplifierChoice(all.size(), one, -1, outputs(one), List.of()));
    }
    return all;
  }

  private static AmplifierChoice ofPlan(SlotLayout layout, int a) {
    PlanIndex index = layout.index();
    List<Integer> fixed =
        index.channelsOf(a).stream().filter(layout.fixedChannels()::contains).toList();
    List<String> used =
        fixed.stream().flatMap(c -> index.plan().channels().get(c).outputs().stream()).toList();
    PlannedAmplifier planned = index.plan().amplifiers().get(a);
    List<List<String>> free =
        outputs(planned).stream()
            .map(ids -> ids.stream().filter(id -> !used.contains(id)).toList())
            .toList();
    return new AmplifierChoice(a, planned, a, free, fixed);
  }

  private static List<List<String>> outputs(PlannedAmplifier amplifier) {
    return amplifier.outputs().stream().map(PlannedAmplifier.Outputs::ids).toList();
  }

  private static boolean fits(PackageOptionsRequest q, OfferedAmplifier offered) {
    return q.amplifierPlace() == null
        || q.amplifierPlace().room() == null
        || offered.size().fitsInto(q.amplifierPlace().room());
  }

  /** Whether it comes in new. */
  boolean isNew() {
    return ofPlan < 0;
  }

  /** Whether it is in every package. */
  boolean always() {
    return !fixedChannels.isEmpty();
  }

  PackageFigures cost() {
    return PackageFigures.cost(Prices.of(planned.price()), planned.massG());
  }
}
