package org.footwell.electrical.amplifier;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.Amplifier;

/**
 * The smallest rated load allowed as connected.
 *
 * @param ohm the whole load of a bridge
 * @param at JSON Pointer to the figure it comes from
 */
public record SmallestLoad(double ohm, String at) {

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

  /**
   * The smallest load by what is known of it, or null when that is nothing; warns when the figures
   * disagree.
   *
   * @param at JSON Pointer to the amplifier
   */
  public static SmallestLoad of(Amplifier amplifier, boolean bridged, String at, Run run) {
    Double minimumOhm = amplifier.minimumOhm();
    Double minimumBridgedOhm = amplifier.minimumBridgedOhm();
    if (!bridged) {
      return minimumOhm == null ? null : new SmallestLoad(minimumOhm, at + "/minimum_ohm");
    }
    Double ofHalves = minimumOhm == null ? null : run.apply(OF_HALVES, minimumOhm);
    if (minimumBridgedOhm == null) {
      return ofHalves == null ? null : new SmallestLoad(ofHalves, at + "/minimum_ohm");
    }
    if (ofHalves != null && minimumBridgedOhm < ofHalves) {
      run.find(AmplifierFinding.BRIDGED_MINIMUM_DOUBTFUL)
          .at(at + "/minimum_bridged_ohm")
          .value(minimumBridgedOhm)
          .limit(ofHalves);
    }
    return new SmallestLoad(minimumBridgedOhm, at + "/minimum_bridged_ohm");
  }

  /** Whether a load is smaller than is allowed. */
  public boolean isAbove(double loadOhm) {
    return loadOhm < ohm * (1 - ROUNDING);
  }
}
