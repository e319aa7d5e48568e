package org.footwell.loudspeaker;

import org.footwell.calculation.Formula;
import org.footwell.parts.Driver;
import org.footwell.physics.Phasor;
import org.footwell.physics.ThieleSmall;

/**
 * The inductance of a voice coil, lossy as eddy currents make it.
 *
 * @param mh inductance, mH
 * @param atHz where it is stated
 * @param exponent of the power of frequency its impedance grows with: 1 for an ideal coil
 */
public record CoilImpedance(double mh, double atHz, double exponent) {

  /** Resistive part in ohm from the reactance X0 in ohm at f0 Hz, at f Hz, for an exponent n. */
  public static final Formula.Of4 REAL_OHM =
      Formula.of("coil_real_ohm", "X0·(f/f0)^n/tan(n·π/2)", "ohm", ThieleSmall.LEACH)
          .with("X0", "f", "f0", "n", (x0, f, f0, n) -> grown(x0, f, f0, n) * lossShare(n));

  /** Reactance in ohm from the same. */
  public static final Formula.Of4 IMAGINARY_OHM =
      Formula.of("coil_imaginary_ohm", "X0·(f/f0)^n", "ohm", ThieleSmall.LEACH)
          .with("X0", "f", "f0", "n", CoilImpedance::grown);

  /** The coil of a driver; none where its inductance is not given. */
  public static CoilImpedance of(Driver driver) {
    double exponent = driver.leExponent();
    return new CoilImpedance(
        driver.leMh() == null ? 0 : driver.leMh(),
        exponent == 1 ? 1000 : driver.leAtHz(),
        exponent);
  }

  static CoilImpedance none() {
    return new CoilImpedance(0, 1000, 1);
  }

  /** Its reactance in ohm where it is stated. */
  double reactanceOhm() {
    return ThieleSmall.REACTANCE_OHM.at(atHz, mh);
  }

  /** Its impedance in ohm at a frequency in Hz, without the DC resistance. */
  public Phasor at(double f) {
    return impedance(f).value();
  }

  Slope impedance(double f) {
    double reactance = grown(reactanceOhm(), f, atHz, exponent);
    double slope = exponent * reactance / (2 * Math.PI * f);
    double share = lossShare(exponent);
    return new Slope(reactance * share, reactance, slope * share, slope);
  }

  private static double grown(double x0, double f, double f0, double n) {
    return n == 1 ? x0 * f / f0 : x0 * Math.pow(f / f0, n);
  }

  /** Resistance over reactance: 0 for an ideal coil. */
  private static double lossShare(double n) {
    return n == 1 ? 0 : 1 / Math.tan(n * Math.PI / 2);
  }
}
