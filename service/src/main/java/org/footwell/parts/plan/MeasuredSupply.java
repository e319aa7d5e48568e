package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.rule.Ascending;

/** The two voltages of an amplifier's supply at one moment, with the programme playing as set. */
@Ascending(
    value = {"at_amplifier_v", "at_battery_v"},
    orEqual = true)
public record MeasuredSupply(
    @Schema(description = "Id of the amplifier") @NotNull @Size(min = 1, max = 40) String amplifier,
    @Schema(description = "Voltage between the battery's terminals, V")
        @NotNull
        @DecimalMin("1")
        @DecimalMax("60")
        Double atBatteryV,
    @Schema(description = "Voltage between the amplifier's supply terminals, V")
        @NotNull
        @DecimalMin("1")
        @DecimalMax("60")
        Double atAmplifierV) {

  /** What is lost on the way there and back, V. */
  public double dropV() {
    return atBatteryV - atAmplifierV;
  }
}
