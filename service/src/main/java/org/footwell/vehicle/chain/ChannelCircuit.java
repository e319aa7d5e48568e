package org.footwell.vehicle.chain;

import org.footwell.physics.Phasor;

/**
 * One channel from its amplifier to its coils: a source of voltage with its output impedance, the
 * cable, and the loudspeaker at its end.
 *
 * @param cableOhm both conductors
 * @param outputOhm of the amplifier as connected
 */
record ChannelCircuit(Loudspeaker loudspeaker, double cableOhm, double outputOhm) {

  /** What the amplifier meets where the loudspeaker alone has an impedance, ohm. */
  Phasor terminalOhm(Phasor networkOhm) {
    return networkOhm.plus(cableOhm);
  }

  /** What the source meets there, ohm. */
  private Phasor sourceOhm(Phasor networkOhm) {
    return networkOhm.plus(cableOhm + outputOhm);
  }

  /** Voltage at the loudspeaker there for 1 V from the source. */
  Phasor networkV(Phasor networkOhm) {
    return networkOhm.over(sourceOhm(networkOhm));
  }

  /** Real power the amplifier gives there for 1 V from the source, W. */
  double terminalW(Phasor networkOhm) {
    return terminalOhm(networkOhm).re() / sourceOhm(networkOhm).square();
  }

  /**
   * DC resistance in ohm with the cable: infinite where capacitors block all of it, null where it is
   * not known.
   */
  Double dcOhm() {
    Double ohm = loudspeaker.dcOhm();
    return ohm == null ? null : (Double) (ohm + cableOhm);
  }
}
