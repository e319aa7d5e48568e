package org.footwell.electrical.load;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** A passive crossover splits a network so that every band finds its way through. */
@Check.Of(
    value = {"network", "coils.*.name", "coils.*.coil_count", "coils.*.rated_ohm", "coils.*.band"},
    says =
        "Where a coil of network has a band all have one, and what is in series has every band of"
            + " the others.")
final class NetworkBands implements Check<WiringLoadRequest> {

  @Override
  public void check(WiringLoadRequest q, Refusing to) {
    NetworkReader.parse(q.network(), NetworkReader.NETWORK, Refusing.unheard())
        .flatMap(written -> NetworkReader.of(written, Coil.each(q.coils()), Refusing.unheard()))
        .ifPresent(network -> Bands.check(network, to));
  }
}
