package org.footwell.electrical.supply;

import java.util.Objects;
import org.footwell.parts.Cable;

/**
 * A cable with everything known of it that its size is looked for with.
 *
 * @param areaMm2 the size to be checked, or null when one is looked for
 * @param conductivity relative to annealed copper
 * @param conductorC temperature its resistance is counted at, °C
 * @param insulationC what its insulation stands for long, °C
 */
record LaidCable(
    double oneWayM,
    Double areaMm2,
    double conductivity,
    double conductorC,
    double insulationC,
    boolean engineSpace) {

  /** Usual under load: common practice, no source. */
  private static final double WARM_C = 50;

  /** The main cable. */
  static LaidCable main(Cable cable) {
    return new LaidCable(
        cable.oneWayM(),
        cable.areaMm2(),
        cable.conductivity(),
        Objects.requireNonNullElse(cable.conductorTemperatureC(), WARM_C),
        cable.insulationTemperatureC(),
        cable.engineSpace());
  }

  /** A branch of this one: what it does not say itself is as here, save where it lies. */
  LaidCable branch(Cable cable) {
    boolean ownConductor = cable.conductivity() != null;
    return new LaidCable(
        cable.oneWayM(),
        cable.areaMm2(),
        ownConductor ? cable.conductivity() : conductivity,
        Objects.requireNonNullElse(cable.conductorTemperatureC(), conductorC),
        Objects.requireNonNullElse(cable.insulationTemperatureC(), insulationC),
        Boolean.TRUE.equals(cable.engineSpace()));
  }
}
