package org.footwell.electrical.amplifier;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needed;
import org.footwell.parts.Amplifier;
import org.footwell.parts.Driver;

/** An amplifier and what hangs on it. */
@Built
@ExactlyOne({"amplifier.rails", "amplifier.ratings"})
@Needed({"driver.continuous_power_w", "driver.rated_ohm"})
public record RailMatchRequest(
    @Schema(
            description =
                "Impedance really connected to the output, cable included when it is known, ohm;"
                    + " the whole load of a bridge")
        @NotNull
        Double loadOhm,
    @Schema(description = "The amplifier, by its rails or its published powers") @NotNull
        Amplifier amplifier,
    Boolean bridged,
    @Schema(
            description =
                "The driver, or all drivers on this output taken together: their powers added up,"
                    + " their rated impedance as wired")
        Driver driver,
    @Schema(
            description =
                "Supply voltage the answer is for, V; the one that rails or ratings are stated at"
                    + " when not given")
        Double supplyV)
    implements ConnectedAmplifier {

  public RailMatchRequest {
    bridged = bridged == null ? Boolean.FALSE : bridged;
  }
}
