package org.footwell.electrical.load;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** What stands in a network is a coil that there is, connected once. */
@Check.Of(
    value = {"network", "coils.*.name", "coils.*.coil_count", "coils.*.rated_ohm"},
    says = "network names coils of the list, each once, or gives impedances of 0.1 to 1000 ohm.")
final class NetworkCoils implements Check<WiringLoadRequest> {

  @Override
  public void check(WiringLoadRequest q, Refusing to) {
    NetworkReader.parse(q.network(), NetworkReader.NETWORK, Refusing.unheard())
        .ifPresent(written -> NetworkReader.of(written, Coil.each(q.coils()), to));
  }
}
