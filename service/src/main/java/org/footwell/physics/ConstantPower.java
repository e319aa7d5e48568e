package org.footwell.physics;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/**
 * A load that draws the same power whatever its voltage, behind a resistance. Its current rises as
 * the voltage falls; past U²/(4·R) no current brings the power through.
 */
public final class ConstantPower {

  public static final Source KIRCHHOFF =
      Source.of("Kirchhoff's laws, for a load of constant power: P = (U − R·I)·I");
  public static final Source MATCHED_LOAD = Source.of("Maximum power transfer theorem");

  /** Power in W drawn for P watts put out at the efficiency η, above 0 to 1. */
  public static final Formula.Of2 INPUT =
      Formula.of("input_w", "P/η", "W", Source.DEFINITION).with("P", "η", (p, eta) -> p / eta);

  /**
   * Current in A that brings P watts to the far end of R ohms from U volts: the smaller root, the
   * one with the higher voltage at the load. NaN past U²/(4·R): there is none.
   */
  public static final Formula.Of3 CURRENT =
      Formula.of("current_a", "2·P/(U + √(U² − 4·R·P))", "A", KIRCHHOFF)
          .with("P", "U", "R", (p, u, r) -> 2 * p / (u + Math.sqrt(u * u - 4 * r * p)));

  /** Largest power in W that R ohms, above 0, let through from U volts; half is lost then. */
  public static final Formula.Of2 LARGEST =
      Formula.of("largest_w", "U²/(4·R)", "W", MATCHED_LOAD)
          .with("U", "R", (u, r) -> u * u / (4 * r));

  private ConstantPower() {}
}
