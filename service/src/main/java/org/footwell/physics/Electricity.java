package org.footwell.physics;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** Ohm's and Joule's laws for RMS values of sines into a resistance. */
public final class Electricity {

  public static final Source LAW = Source.of("Ohm's and Joule's laws");

  /** Power in W that U volts RMS give into R ohms (above 0). */
  public static final Formula.Of2 POWER =
      Formula.of("power_w", "U²/R", "W", LAW).with("U", "R", (u, r) -> u * u / r);

  /** Voltage in V RMS that gives P watts in R ohms. */
  public static final Formula.Of2 VOLTAGE =
      Formula.of("voltage_v", "√(P·R)", "V", LAW).with("P", "R", (p, r) -> Math.sqrt(p * r));

  /** Current in A that U volts drive through R ohms (above 0). */
  public static final Formula.Of2 CURRENT =
      Formula.of("current_a", "U/R", "A", LAW).with("U", "R", (u, r) -> u / r);

  /** Power in W of I amperes RMS in R ohms. */
  public static final Formula.Of2 POWER_OF_CURRENT =
      Formula.of("power_w", "I²·R", "W", LAW).with("I", "R", (i, r) -> i * i * r);

  /** Peak voltage in V of a sine of U volts RMS. */
  public static final Formula.Of1 PEAK_VOLTAGE =
      Formula.of("peak_voltage_v", "√2·U", "V", DEFINITION).with("U", u -> Math.sqrt(2) * u);

  /** Peak current in A of a sine of I amperes RMS. */
  public static final Formula.Of1 PEAK_CURRENT =
      Formula.of("peak_current_a", "√2·I", "A", DEFINITION).with("I", i -> Math.sqrt(2) * i);

  private Electricity() {}
}
