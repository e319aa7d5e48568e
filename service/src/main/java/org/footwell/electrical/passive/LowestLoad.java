package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.NetworkFinding.FILTER_LOAD_LOW;
import static org.footwell.electrical.passive.NetworkFinding.NETWORK_LOAD_BELOW_RATED;
import static org.footwell.electrical.passive.NetworkFinding.NETWORK_LOAD_TOO_LOW;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.electrical.amplifier.SmallestLoad;
import org.footwell.electrical.impedance.Extremes.Place;
import org.footwell.parts.Amplifier;

/** Holds the lowest modulus an amplifier meets against the rated load it may dip from. */
final class LowestLoad {

  static final Source IEC_60268_5 =
      Source.of(
          "IEC 60268-5:2003, Sound system equipment, Part 5: Loudspeakers: rated impedance; the"
              + " modulus is nowhere in the rated range below 80 % of it");

  private static final Formula.Of1 ALLOWED_OHM =
      Formula.of("lowest_allowed_ohm", "0.8·R", "ohm", IEC_60268_5).with("R", r -> 0.8 * r);

  private LowestLoad() {}

  /** Against the smallest rated load of an amplifier, which allows for such dips. */
  static void againstAmplifier(Place lowest, Amplifier amplifier, boolean bridged, Run run) {
    SmallestLoad smallest = SmallestLoad.of(amplifier, bridged, "/amplifier", run);
    double allowed = run.apply(ALLOWED_OHM, smallest.ohm());
    if (lowest.value() < smallest.ohm()) {
      run.find(lowest.value() < allowed ? NETWORK_LOAD_TOO_LOW : NETWORK_LOAD_BELOW_RATED)
          .at(smallest.at())
          .value(lowest.value())
          .limit(allowed)
          .with("frequency", lowest.frequencyHz())
          .with("rated", smallest.ohm());
    }
  }

  /** Against the load a filter is for, where no amplifier is known. */
  static void againstRated(Place lowest, double loadOhm, Run run) {
    double allowed = run.apply(ALLOWED_OHM, loadOhm);
    if (lowest.value() < allowed) {
      run.find(FILTER_LOAD_LOW)
          .at("/load_ohm")
          .value(lowest.value())
          .limit(allowed)
          .with("frequency", lowest.frequencyHz())
          .with("rated", loadOhm);
    }
  }
}
