package org.footwell.electrical.gain;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** What an output stage on one supply can swing, clean. */
final class BridgeOutput {

  static final Source BRIDGE =
      Source.of(
          "A bridge on one supply swings its two ends against each other: peak = supply less drop");

  private static final Formula.Of2 BRIDGE_PEAK =
      Formula.of("clean_peak_v", "supply − drop", "V", BRIDGE)
          .with("supply", "drop", (supply, drop) -> supply - drop);
  private static final Formula.Of2 SINGLE_PEAK =
      Formula.of("clean_peak_v", "(supply − drop)/2", "V", BRIDGE)
          .with("supply", "drop", (supply, drop) -> (supply - drop) / 2);
  private static final Formula.Of1 RMS =
      Formula.of("clean_output_v", "peak/√2", "V", DEFINITION)
          .with("peak", peak -> peak / Math.sqrt(2));

  private BridgeOutput() {}

  /** RMS voltage of its largest clean sine, V. */
  static double cleanV(boolean bridged, double supplyV, double dropV, Arithmetic arithmetic) {
    double peak = arithmetic.apply(bridged ? BRIDGE_PEAK : SINGLE_PEAK, supplyV, dropV);
    return arithmetic.apply(RMS, peak);
  }
}
