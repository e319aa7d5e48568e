package org.footwell.acoustic.crossover;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.FilterFault;

/** A Linkwitz-Riley filter is two equal ones in a row. */
@Check.Of(
    value = {"kind", "orders"},
    says = "Linkwitz-Riley has even orders only.")
final class EvenOrders implements Check<CrossoverPlanRequest> {

  @Override
  public void check(CrossoverPlanRequest q, Refusing to) {
    for (int i = 0; i < q.orders().size(); i++) {
      int order = q.orders().get(i);
      if (q.kind() == Kind.LINKWITZ_RILEY && order % 2 == 1) {
        to.refuse(FilterFault.LINKWITZ_RILEY_ODD)
            .at("/orders/" + i)
            .given(order)
            .allowed(Allowed.oneOf(2, 4, 6, 8));
      }
    }
  }
}
