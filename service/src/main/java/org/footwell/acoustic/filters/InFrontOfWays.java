package org.footwell.acoustic.filters;

import static org.footwell.calculation.CoreFault.NOT_ALLOWED;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;

/** Nobody listens from behind a way. */
@Check.Of(
    value = {"listening.distance_m", "ways.*.behind_m"},
    says = "No way stands as far in front as the listener.")
final class InFrontOfWays implements Check<CrossoverFiltersRequest> {

  @Override
  public void check(CrossoverFiltersRequest q, Refusing to) {
    for (int i = 0; q.listening() != null && i < q.ways().size(); i++) {
      double distance = q.listening().distanceM();
      if (-q.ways().get(i).behindM() >= distance) {
        to.refuse(NOT_ALLOWED)
            .at("/ways/" + i + "/behind_m")
            .given(q.ways().get(i).behindM())
            .allowed(Allowed.above(-distance, "m"));
      }
    }
  }
}
