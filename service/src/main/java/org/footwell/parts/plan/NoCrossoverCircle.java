package org.footwell.parts.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Given;
import org.footwell.parts.Crossover;

/** From a channel to those above it: who comes back to itself would be below and above at once. */
@Check.Of(
    value = {"crossovers.*.lower", "crossovers.*.upper"},
    says = "No channel crosses over into itself, through others either.")
final class NoCrossoverCircle implements Check<VehiclePlan> {

  @Override
  public void check(VehiclePlan plan, Refusing to) {
    List<Crossover> all = plan.crossovers();
    for (int i = 0; i < all.size(); i++) {
      Set<String> above = new HashSet<>(List.of(all.get(i).upper()));
      int before;
      do {
        before = above.size();
        all.stream()
            .filter(crossover -> above.contains(crossover.lower()))
            .map(Crossover::upper)
            .toList()
            .forEach(above::add);
      } while (above.size() > before);
      if (above.contains(all.get(i).lower())) {
        to.refuse(PlanFault.CROSSOVERS_IN_A_CIRCLE)
            .at("/crossovers/" + i)
            .given(Given.both(all.get(i).lower(), all.get(i).upper()));
      }
    }
  }
}
