package org.footwell.electrical.supply;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.parts.Battery;
import org.footwell.physics.ConstantPower;

/**
 * A source as the amplifier sees it: a voltage behind a resistance, the battery's terminals
 * somewhere between.
 *
 * @param openV voltage without the amplifier's current, V
 * @param sourceOhm resistance up to the battery's terminals, ohm
 * @param cableOhm resistance from there to the amplifier and back, ohm
 */
record Feed(double openV, double sourceOhm, double cableOhm) {

  /** Voltage in V of a battery at rest at U that gives I amperes through Ri ohms; I < 0 charges. */
  private static final Formula.Of3 BATTERY =
      Formula.of("battery_v", "U − Ri·I", "V", ConstantPower.KIRCHHOFF)
          .with("U", "Ri", "I", (u, ri, i) -> u - ri * i);

  /**
   * Current in A of an amplifier that draws P watts at Us volts and goes with the voltage like a
   * resistance, as an unregulated one does at the edge of clipping.
   */
  private static final Formula.Of4 LIKE_RESISTANCE =
      Formula.of("current_a", "U/(R + Us²/P)", "A", ConstantPower.KIRCHHOFF)
          .with("U", "R", "Us", "P", (u, r, us, p) -> u / (r + us * us / p));

  /** A regulator that holds the voltage at the battery. */
  static Feed held(double voltage, double cableOhm) {
    return new Feed(voltage, 0, cableOhm);
  }

  /** The battery, with what else it gives (or, below 0, is given) besides the amplifier. */
  static Feed battery(Battery battery, double elsewhereA, double cableOhm, Arithmetic arithmetic) {
    double open = arithmetic.apply(BATTERY, battery.restingV(), battery.internalOhm(), elsewhereA);
    return new Feed(open, battery.internalOhm(), cableOhm);
  }

  /** Resistance of the whole way, ohm. */
  double ohm() {
    return sourceOhm + cableOhm;
  }

  /** Current in A for a constant power, or null when it cannot be brought through. */
  Double constantPower(double watts, Arithmetic arithmetic) {
    if (openV <= 0 || Double.isNaN(ConstantPower.CURRENT.at(watts, openV, ohm()))) {
      return null;
    }
    return arithmetic.apply(ConstantPower.CURRENT, watts, openV, ohm());
  }

  /** Current in A for a power that is stated at a voltage and goes with it, or null for none. */
  Double likeResistance(double watts, double statedV, Arithmetic arithmetic) {
    return openV <= 0 ? null : arithmetic.apply(LIKE_RESISTANCE, openV, ohm(), statedV, watts);
  }

  /** Voltage in V at the battery while the amplifier draws I amperes. */
  double atBattery(double current, Arithmetic arithmetic) {
    return arithmetic.apply(BATTERY, openV, sourceOhm, current);
  }

  /** Voltage in V at the amplifier while it draws I amperes. */
  double atAmplifier(double current, Arithmetic arithmetic) {
    return arithmetic.apply(BATTERY, openV, ohm(), current);
  }

  /** Most power in W that can be drawn. */
  double largest() {
    return openV <= 0 ? 0 : ConstantPower.LARGEST.at(openV, ohm());
  }
}
