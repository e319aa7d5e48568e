package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.AlignmentFault.CROSSOVER_CIRCLE;
import static org.footwell.acoustic.alignment.AlignmentFault.CROSSOVER_WITH_ITSELF;

import java.util.List;
import java.util.stream.IntStream;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.parts.Crossover;

/** Crossovers lead upwards: a channel plays below others, and never below itself. */
@Check.Of(
    value = {"crossovers.*.lower", "crossovers.*.upper", "channels.*.name"},
    says = "No channel crosses over into itself, through others either.")
final class CrossoversUpwards implements Check<SeatDelaysRequest> {

  @Override
  public void check(SeatDelaysRequest q, Refusing to) {
    Crossovers handing = new Crossovers(q);
    List<Crossover> all = handing.all();
    List<Integer> alone =
        IntStream.range(0, all.size())
            .filter(i -> all.get(i).lower().equals(all.get(i).upper()))
            .boxed()
            .toList();
    alone.forEach(
        i -> to.refuse(CROSSOVER_WITH_ITSELF).at("/crossovers/" + i).given(all.get(i).lower()));
    if (alone.isEmpty() && handing.known()) {
      List<Integer> order = handing.highestFirst();
      for (int i = 0; i < all.size(); i++) {
        if (!order.contains(handing.lower(i))) {
          to.refuse(CROSSOVER_CIRCLE).at("/crossovers/" + i).given(all.get(i).lower());
        }
      }
    }
  }
}
