package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * An amplifier while a package is put together.
 *
 * @param used outputs of each entry that units have taken
 * @param cleanW clean power of all its channels at its rated supply voltage
 */
record OpenAmplifier(AmplifierChoice amplifier, List<Integer> used, double cleanW) {

  static OpenAmplifier of(AmplifierChoice amplifier, double fixedCleanW) {
    return new OpenAmplifier(
        amplifier, Collections.nCopies(amplifier.free().size(), 0), fixedCleanW);
  }

  /** How many outputs of an entry are left. */
  int left(int outputs) {
    return amplifier.free().get(outputs).size() - used.get(outputs);
  }

  OpenAmplifier with(int outputs, int needed, double moreCleanW) {
    List<Integer> more = new ArrayList<>(used);
    more.set(outputs, used.get(outputs) + needed);
    return new OpenAmplifier(amplifier, more, cleanW + moreCleanW);
  }
}
