package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needs;

/**
 * A loudspeaker output of a factory radio or amplifier, as measured or by its supply. What is not
 * known is left out, and asked for in the findings.
 */
@Built
@ExactlyOne({"clean_output_v", "supply_v"})
@Needs(field = "supply_v", beside = "drop_v")
@Needs(field = "stated_power_w", beside = "stated_load_ohm")
@Needs(field = "load_resistor_rated_w", beside = "load_resistor_ohm")
@Ascending({"drop_v", "supply_v"})
public record FactoryOutput(
    Double cleanOutputV,
    @Schema(
            description =
                "Supply voltage of its output stages, V. The volume is then that at which a"
                    + " full-scale sine just stays clean")
        Double supplyV,
    Double dropV,
    @Schema(
            description =
                "Power of one channel as its maker states it, W: 50 for '4 x 50 W'; the clean"
                    + " voltage is never taken higher than this power needs")
        @DecimalMin("0.1")
        @DecimalMax("2000")
        Double statedPowerW,
    @Schema(description = "Load that power is stated for, ohm") @DecimalMin("0.5") @DecimalMax("64")
        Double statedLoadOhm,
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
  public boolean takenAsBridged() {
    return !Boolean.FALSE.equals(bridged);
  }
}
