package org.footwell.load;

import static org.footwell.load.LoadFinding.BRIDGED_MINIMUM_DOUBTFUL;
import static org.footwell.load.LoadFinding.LOAD_BELOW_MINIMUM;
import static org.footwell.load.LoadFinding.LOWEST_MODULUS;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.load.WiringLoadRequest.Amplifier;

/** Holds the load against what the amplifier allows: a rated load against a rated load. */
final class AmplifierLimit {

  /** What is lost in the last digits of a parallel connection is no reason to stop anyone. */
  private static final double ROUNDING = 1e-9;

  /** Smallest load across a bridge of which each half bears Rmin: each sees half the load. */
  private static final Formula.Of1 OF_HALVES =
      Formula.of(
              "minimum_bridged_ohm",
              "2·Rmin",
              "ohm",
              Source.of("Symmetry of a bridge: its middle stays at zero"))
          .with("Rmin", minimum -> 2 * minimum);

  private AmplifierLimit() {}

  /**
   * The smallest rated load allowed as connected.
   *
   * @param at JSON Pointer to the figure it comes from
   */
  record Smallest(double ohm, String at) {
    boolean isAbove(double loadOhm) {
      return loadOhm < ohm * (1 - ROUNDING);
    }
  }

  /**
   * The smallest load by what is known of it, or null when that is nothing; warns when the figures
   * disagree.
   *
   * @param minimumOhm of one channel not bridged, or null
   * @param minimumBridgedOhm of the bridge, or null
   * @param at JSON Pointer to where both stand
   */
  static Smallest smallest(
      Double minimumOhm, boolean bridged, Double minimumBridgedOhm, String at, Run run) {
    if (!bridged) {
      return minimumOhm == null ? null : new Smallest(minimumOhm, at + "/minimum_ohm");
    }
    Double ofHalves = minimumOhm == null ? null : run.apply(OF_HALVES, minimumOhm);
    if (minimumBridgedOhm == null) {
      return ofHalves == null ? null : new Smallest(ofHalves, at + "/minimum_ohm");
    }
    if (ofHalves != null && minimumBridgedOhm < ofHalves) {
      run.find(BRIDGED_MINIMUM_DOUBTFUL)
          .at(at + "/minimum_bridged_ohm")
          .value(minimumBridgedOhm)
          .limit(ofHalves);
    }
    return new Smallest(minimumBridgedOhm, at + "/minimum_bridged_ohm");
  }

  static void check(Amplifier amplifier, double loadOhm, double lowestModulusOhm, Run run) {
    Smallest smallest =
        smallest(
            amplifier.minimumOhm(),
            amplifier.bridged(),
            amplifier.minimumBridgedOhm(),
            "/amplifier",
            run);
    if (smallest == null) {
      return;
    }
    if (smallest.isAbove(loadOhm)) {
      run.find(LOAD_BELOW_MINIMUM).at(smallest.at()).value(loadOhm).limit(smallest.ohm());
    } else if (smallest.isAbove(lowestModulusOhm)) {
      run.find(LOWEST_MODULUS)
          .at(smallest.at())
          .value(lowestModulusOhm)
          .limit(loadOhm)
          .with("minimum", smallest.ohm());
    }
  }
}
