package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.NetworkFault.ORDER_NOT_LINKWITZ_RILEY;
import static org.footwell.electrical.passive.NetworkFault.ORDER_NOT_PASSIVE;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.parts.Filter;

/** A filter that is built of coils and capacitors. */
@Check.Of(
    value = {"kind", "order"},
    says = "order is 1 to 4, and even for Linkwitz-Riley.")
final class PassiveOrder implements Check<Filter> {

  private static final int HIGHEST = 4;

  /** Whether it holds for a filter, or for none. */
  static boolean kept(Filter filter) {
    return filter == null || (filter.order() <= HIGHEST && filter.possible());
  }

  @Override
  public void check(Filter filter, Refusing to) {
    if (filter.order() > HIGHEST) {
      to.refuse(ORDER_NOT_PASSIVE)
          .at("/order")
          .given(filter.order())
          .allowed(Allowed.between(1, HIGHEST, ""));
    } else if (!filter.possible()) {
      to.refuse(ORDER_NOT_LINKWITZ_RILEY)
          .at("/order")
          .given(filter.order())
          .allowed(Allowed.oneOf(2, 4));
    }
  }
}
