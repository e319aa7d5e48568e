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

  static void check(Amplifier amplifier, double loadOhm, double lowestModulusOhm, Run run) {
    if (!amplifier.bridged()) {
      if (amplifier.minimumOhm() != null) {
        hold(loadOhm, lowestModulusOhm, amplifier.minimumOhm(), "/amplifier/minimum_ohm", run);
      }
      return;
    }
    Double ofHalves =
        amplifier.minimumOhm() == null ? null : run.apply(OF_HALVES, amplifier.minimumOhm());
    Double bridged = amplifier.minimumBridgedOhm();
    if (bridged != null) {
      if (ofHalves != null && bridged < ofHalves) {
        run.find(BRIDGED_MINIMUM_DOUBTFUL)
            .at("/amplifier/minimum_bridged_ohm")
            .value(bridged)
            .limit(ofHalves);
      }
      hold(loadOhm, lowestModulusOhm, bridged, "/amplifier/minimum_bridged_ohm", run);
    } else if (ofHalves != null) {
      hold(loadOhm, lowestModulusOhm, ofHalves, "/amplifier/minimum_ohm", run);
    }
  }

  private static void hold(double load, double modulus, double minimum, String at, Run run) {
    if (load < minimum * (1 - ROUNDING)) {
      run.find(LOAD_BELOW_MINIMUM).at(at).value(load).limit(minimum);
    } else if (modulus < minimum * (1 - ROUNDING)) {
      run.find(LOWEST_MODULUS).at(at).value(modulus).limit(load).with("minimum", minimum);
    }
  }
}
