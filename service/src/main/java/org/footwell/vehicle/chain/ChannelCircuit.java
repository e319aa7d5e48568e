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

  /**
   * The channel at one frequency for 1 V from the source.
   *
   * @param networkOhm impedance of the loudspeaker alone
   * @param terminalOhm what the amplifier meets, with the cable
   * @param sourceOhm what the source meets, with the output impedance
   */
  record Fed(Phasor networkOhm, Phasor terminalOhm, Phasor sourceOhm) {

    /** Voltage at the loudspeaker's terminals. */
    Phasor networkV() {
      return networkOhm.over(sourceOhm);
    }

    /** Voltage at the amplifier's. */
    Phasor terminalV() {
      return terminalOhm.over(sourceOhm);
    }

    /** Real power the amplifier gives, W. */
    double terminalW() {
      return terminalOhm.re() / sourceOhm.square();
    }
  }

  /** It at a frequency where the impedance of the loudspeaker is known, ohm. */
  Fed feeding(Phasor networkOhm) {
    Phasor terminalOhm = networkOhm.plus(cableOhm);
    return new Fed(networkOhm, terminalOhm, terminalOhm.plus(outputOhm));
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
