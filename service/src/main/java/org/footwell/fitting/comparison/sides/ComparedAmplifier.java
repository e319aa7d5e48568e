package org.footwell.fitting.comparison.sides;

import io.swagger.v3.oas.annotations.media.Schema;
import org.footwell.calculation.Built;
import org.footwell.calculation.Run;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.physics.Electricity;

/** What drives each driver of a position. */
@Built
@ExactlyOne({"voltage_v", "power_w"})
public record ComparedAmplifier(
    @Schema(description = "Largest clean sine at each driver, V RMS") Double voltageV,
    @Schema(description = "Largest clean sine power for each driver, W") Double powerW,
    @Schema(
            description =
                "Load that power_w is stated for, ohm; when not given, the rated impedance of the"
                    + " part it first drives. Into other loads the voltage is taken to stay")
        Double loadOhm,
    @Schema(
            description =
                "Smallest rated impedance of a driver that it can drive in this position, ohm: with several"
                    + " drivers on one channel, the figure for each of them")
        Double minimumOhm) {

  /** Clean voltage, V RMS, when it was made for a rated impedance in ohm. */
  public double cleanV(double ratedOhm, Run run) {
    return voltageV != null
        ? voltageV
        : run.apply(Electricity.VOLTAGE, powerW, loadOhm == null ? ratedOhm : loadOhm);
  }
}
