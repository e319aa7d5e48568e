package org.footwell.electrical.heat;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Formula;

/**
 * The formulas for one kind of signal: the same for all, but named after the signal, so that the
 * workings tell which line is whose.
 */
record DutyFormulas(
    Formula.Of2 current,
    Formula.Of3 output,
    Formula.Of1 meanCurrent,
    Formula.Of2 meanCurrentWithQuiescent,
    Formula.Of2 railPower,
    Formula.Of4 switchingRailPower,
    Formula.Of2 heat) {

  /**
   * @param name snake_case name of the signal
   * @param gaussian whether it is Gaussian, otherwise a sine
   */
  static DutyFormulas of(String name, boolean gaussian) {
    String prefix = name + "_";
    return new DutyFormulas(
        Formula.of(prefix + "output_current_a", "U/|Z|", "A", DEFINITION)
            .with("U", "|Z|", (u, z) -> u / z),
        Formula.of(prefix + "output_power_w", "U·I·cos φ", "W", DEFINITION)
            .with("U", "I", "cos φ", (u, i, cos) -> u * i * cos),
        gaussian
            ? Formula.of(prefix + "mean_current_a", "I·√(2/π)", "A", MeanCurrent.HALF_NORMAL)
                .with("I", i -> MeanCurrent.gaussian(i, 0))
            : Formula.of(prefix + "mean_current_a", "I·2·√2/π", "A", LossyStage.CLASS_B)
                .with("I", i -> MeanCurrent.sine(i, 0)),
        Formula.of(
                prefix + "mean_current_a",
                "mean of √(i² + 4·Iq²), i " + (gaussian ? "Gaussian" : "a sine") + " of RMS I",
                "A",
                LossyStage.TRANSLINEAR)
            .with("I", "Iq", gaussian ? MeanCurrent::gaussian : MeanCurrent::sine),
        Formula.of(prefix + "rail_power_w", "rail·mean current", "W", LossyStage.CLASS_B)
            .with("rail", "mean current", (u, i) -> u * i),
        Formula.of(prefix + "rail_power_w", "P + L + r·I²", "W", LossyStage.TWO_PART_LOSS)
            .with("P", "L", "r", "I", (p, idle, r, i) -> p + idle + r * i * i),
        Formula.of(prefix + "stage_heat_w", "rail power − output power", "W", DEFINITION)
            .with("rail power", "output power", (rail, out) -> rail - out));
  }
}
