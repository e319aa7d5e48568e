package org.footwell.electrical.load;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** A network is written so that it can be read. */
@Check.Of(
    says =
        "Circuit notation: impedances in ohm or names of coils, + between parts in series, || between"
            + " parts in parallel, which binds tighter, and parentheses.")
public final class NetworkNotation implements Check<String> {

  @Override
  public void check(String network, Refusing to) {
    NetworkReader.parse(network, "", to);
  }
}
