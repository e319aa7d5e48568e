package org.footwell.electrical.heat;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.physics.ConstantPower;
import org.footwell.physics.Electricity;

/**
 * Battery, cable and converter.
 *
 * @param batteryV at the battery
 * @param cableOhm between battery and amplifier
 * @param efficiency of the converter, above 0 to 1
 * @param regulated whether power, not current, stays when the voltage falls
 */
record Supply(double batteryV, double cableOhm, double efficiency, boolean regulated) {

  static final Formula.Of2 BATTERY_POWER =
      Formula.of("battery_power_w", "rail power/efficiency", "W", DEFINITION)
          .with("rail power", "efficiency", (rail, efficiency) -> rail / efficiency);

  static final Formula.Of3 TERMINAL_AT_CURRENT =
      Formula.of("terminal_v", "E − I·R", "V", ConstantPower.KIRCHHOFF)
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
          .allowed(RoundedDown.atMost(cableOhm * most / power, "ohm"))
          .with("duty", duty)
          .with("power", power)
          .with("most", most);
      return new Drawn(railW, power, 0, batteryV);
    }
    double current =
        regulated
            ? run.apply(ConstantPower.CURRENT, power, batteryV, cableOhm)
            : run.apply(BATTERY_CURRENT, power, batteryV);
    double terminal = run.apply(TERMINAL_AT_CURRENT, batteryV, current, cableOhm);
    return new Drawn(railW, power, current, terminal);
  }

  /** More power than this cannot pass the cable, W: a quarter of the short circuit's, or all. */
  private double mostPower() {
    return regulated
        ? ConstantPower.LARGEST.at(batteryV, cableOhm)
        : Electricity.POWER.at(batteryV, cableOhm);
  }

  /** The voltage by which a power is a current: the amplifier's own, unless its rails sink too. */
  double voltageOfPower(Drawn drawn) {
    return regulated ? drawn.terminalV() : batteryV;
  }
}
