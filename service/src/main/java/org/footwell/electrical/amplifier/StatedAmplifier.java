package org.footwell.electrical.amplifier;

import org.footwell.calculation.Run;
import org.footwell.electrical.amplifier.SineSource.Delivery;
import org.footwell.parts.Amplifier;

/** An amplifier as it was described and is connected, at the supply it is described for. */
public interface StatedAmplifier {

  /** Clean sine power into a load above 0 ohm. */
  Delivery into(double loadOhm);

  /**
   * Notes how the power into one load follows from the description, and says what is doubtful.
   *
   * @param loadOhm the load, above 0
   * @param atLoad JSON Pointer to what decides the load
   */
  void explain(double loadOhm, String atLoad);

  /**
   * An amplifier by its rails or else its published powers, as connected. Null
   * when nothing is known of its power.
   *
   * @param bridged whether the load hangs between two channels; the request says so at {@code
   *     /bridged}
   * @param at JSON Pointer to the amplifier
   */
  static StatedAmplifier of(Amplifier amplifier, boolean bridged, String at, Run run) {
    boolean regulated = amplifier.supplyRegulated();
    if (amplifier.rails() != null) {
      return StatedRails.of(amplifier.rails(), bridged, regulated, at + "/rails", run);
    }
    if (amplifier.ratings() == null) {
      return null;
    }
    return StatedRatings.of(amplifier.ratings(), bridged, regulated, at + "/ratings", run);
  }
}
