package org.footwell.parts;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;

/** A Linkwitz-Riley filter is two equal ones in a row. */
@Check.Of(
    value = {"kind", "order"},
    says = "Linkwitz-Riley has even orders only.")
public final class EvenOrder implements Check<Filter> {

  @Override
  public void check(Filter filter, Refusing to) {
    if (!filter.possible()) {
      to.refuse(FilterFault.LINKWITZ_RILEY_ODD)
          .at("/order")
          .given(filter.order())
          .allowed(Allowed.oneOf(2, 4, 6, 8));
    }
  }
}
