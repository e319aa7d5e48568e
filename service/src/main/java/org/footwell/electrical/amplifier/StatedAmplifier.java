package org.footwell.electrical.amplifier;

import org.footwell.electrical.amplifier.Amplifier.Delivery;

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
}
