package org.footwell.electrical.heat;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;

/**
 * Battery, cable and converter.
 *
 * @param batteryV at the battery
 * @param cableOhm between battery and amplifier
 * @param efficiency of the converter, above 0 to 1
 * @param regulated whether power, not current, stays when the voltage falls
 */
record Supply(double batteryV, double cableOhm, double efficiency, boolean regulated) {

  static final Source CONSTANT_POWER =
      Source.of("Constant power behind a resistance: V² − E·V + P·R = 0, Ohm's and Joule's laws");

  static final Formula.Of2 BATTERY_POWER =
      Formula.of("battery_power_w", "rail power/efficiency", "W", DEFINITION)
          .with("rail power", "efficiency", (rail, efficiency) -> rail / efficiency);

  /** Voltage in V left to a load that takes P watts from E volts behind R ohms; NaN if it cannot. */
  static final Formula.Of3 TERMINAL =
      Formula.of("terminal_v", "(E + √(E² − 4·P·R))/2", "V", CONSTANT_POWER)
          .with("E", "P", "R", (e, p, r) -> (e + Math.sqrt(e * e - 4 * p * r)) / 2);

  static final Formula.Of3 TERMINAL_AT_CURRENT =
      Formula.of("terminal_v", "E − I·R", "V", CONSTANT_POWER)
          .with("E", "I", "R", (e, i, r) -> e - i * r);

  static final Formula.Of2 BATTERY_CURRENT =
      Formula.of("battery_current_a", "battery power/voltage", "A", DEFINITION)
          .with("battery power", "voltage", (p, v) -> p / v);

  /** Power from the rails, power into the amplifier, current and the voltage left at its terminals. */
  record Drawn(double railW, double powerW, double currentA, double terminalV) {}

  /**
   * What the rails' power takes from the battery. An unregulated converter passes its current on in
   * a fixed ratio, so that the current stays what it would be without a cable.
   */
  Drawn draw(double railW, Duty duty, Run run) {
    double power = run.apply(BATTERY_POWER, railW, efficiency);
    double most = cableOhm == 0 ? Double.POSITIVE_INFINITY : mostPower();
    if (power > most) {
      run.refuse(HeatFault.DRAW_IMPOSSIBLE)
          .at("/supply_cable_ohm")
          .given(cableOhm)
          .allowed(Bounds.atMost(cableOhm * most / power) + " ohm")
          .with("duty", duty)
          .with("power", power)
          .with("most", most);
      return new Drawn(railW, power, 0, batteryV);
    }
    if (regulated) {
      double terminal = run.apply(TERMINAL, batteryV, power, cableOhm);
      return new Drawn(railW, power, run.apply(BATTERY_CURRENT, power, terminal), terminal);
    }
    double current = run.apply(BATTERY_CURRENT, power, batteryV);
    double terminal = run.apply(TERMINAL_AT_CURRENT, batteryV, current, cableOhm);
    return new Drawn(railW, power, current, terminal);
  }

  /** More power than this cannot pass the cable, W: a quarter of the short circuit's, or all. */
  private double mostPower() {
    return (regulated ? 0.25 : 1) * batteryV * batteryV / cableOhm;
  }

  /** The voltage by which a power is a current: the amplifier's own, unless its rails sink too. */
  double voltageOfPower(Drawn drawn) {
    return regulated ? drawn.terminalV() : batteryV;
  }
}
