package org.footwell.electrical.impedance;

import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;

/** Drivers as their terminals show them. */
public final class Drivers {

  private Drivers() {}

  /** A driver by its parameters, with a vas of 43 litre; no exponent for an ideal coil. */
  public static Driver of(
      double re, double leMh, Double exponent, double fs, double qms, double qes) {
    return DriverBuilder.builder()
        .reOhm(re)
        .leMh(leMh)
        .leExponent(exponent)
        .fsHz(fs)
        .qms(qms)
        .qes(qes)
        .vasL(43.0)
        .build();
  }
}
