package org.footwell.vehicle.chain;

import org.footwell.electrical.amplifier.SineSource;

/**
 * An amplifier's output as one channel uses it: the largest clean sine it gives, as the voltage of a
 * source behind its output impedance.
 *
 * @param source clean power into a load
 * @param loadOhm rated load of the channel with its cable
 * @param outputOhm output impedance as connected
 * @param amplifier index in the plan
 */
public record AmplifierOutput(SineSource source, double loadOhm, double outputOhm, int amplifier) {

  /** Clean sine power into the rated load at a supply voltage, W. */
  public double cleanW(double supplyV) {
    return source.into(loadOhm, supplyV).powerW();
  }

  /** RMS voltage of that sine at the terminals with the rated load, V. */
  public double cleanV(double supplyV) {
    return Math.sqrt(cleanW(supplyV) * loadOhm);
  }

  /** The same without a load: the voltage of the source, V. */
  public double clipV(double supplyV) {
    return cleanV(supplyV) * openOverLoaded();
  }

  /** Voltage at open terminals over that with the rated load. */
  public double openOverLoaded() {
    return (loadOhm + outputOhm) / loadOhm;
  }
}
