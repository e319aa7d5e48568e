package org.footwell.electrical.gain;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.footwell.calculation.Built;

/**
 * A loudspeaker output of a factory radio or amplifier. Exactly one of {@code clean_output_v} and
 * {@code supply_v}. What is not known is left out, and asked for in the findings.
 */
@Built
public record FactoryOutput(
    @Schema(
            description =
                "Measured: RMS voltage of a full-scale sine at the chosen volume, still clean, V."
                    + " Exactly one of clean_output_v and supply_v")
        Double cleanOutputV,
    @Schema(
            description =
                "Supply voltage of its output stages, V; with drop_v. The volume is then that at"
                    + " which a full-scale sine just stays clean")
        Double supplyV,
    @Schema(description = "Voltage lost in the output stage at clipping, V; of a whole bridge")
        Double dropV,
    @Schema(
            description =
                "Power of one channel as its maker states it, W: 50 for '4 x 50 W'; the clean"
                    + " voltage is never taken higher than this power needs")
        @DecimalMin("0.1")
        @DecimalMax("2000")
        Double statedPowerW,
    @Schema(description = "Load that power is stated for, ohm; needed with stated_power_w")
        @DecimalMin("0.5")
        @DecimalMax("64")
        Double statedLoadOhm,
    @Schema(
            description =
                "Noise at the output, microvolt RMS, in the weighting of the other noise voltages")
        @DecimalMin("0")
        @DecimalMax("1000000")
        Double noiseUv,
    @Schema(
            description =
                "Whether both terminals are driven, neither on ground (usual); absent: unknown,"
                    + " taken as bridged")
        Boolean bridged,
    @Schema(
            description =
                "Whether it is measured between its two terminals with a floating or differential"
                    + " instrument; absent: unknown")
        Boolean measuredDifferentially,
    @Schema(
            description =
                "Whether the radio checks that loudspeakers are connected; absent: unknown")
        Boolean loadDetection,
    @Schema(description = "Resistor across the output that stands in for the loudspeaker, ohm")
        @DecimalMin("1")
        @DecimalMax("10000")
        Double loadResistorOhm,
    @Schema(description = "Power that resistor is made for, W")
        @DecimalMin("0.01")
        @DecimalMax("1000")
        Double loadResistorRatedW,
    @Schema(description = "How the next device is switched on; absent: unknown") TurnOn turnOn) {

  /** How the next device is switched on. */
  public enum TurnOn {
    /** By a wire that carries the supply voltage when it shall work. */
    REMOTE_WIRE,
    /** By the signal itself. */
    SIGNAL,
    /** By the direct voltage that stands on both terminals of a bridge, half the supply. */
    DC_OFFSET
  }

  /** Taken as bridged unless said otherwise. */
  boolean takenAsBridged() {
    return !Boolean.FALSE.equals(bridged);
  }
}
