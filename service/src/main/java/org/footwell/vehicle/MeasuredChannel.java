package org.footwell.vehicle;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** What was measured of a channel when the vehicle was handed over. */
public record MeasuredChannel(
    @Schema(description = "Id of the channel") @NotNull @Size(min = 1, max = 40) String channel,
    @Schema(
            description =
                "Level at the main seat with the channel alone at its clip point and the programme"
                    + " of the plan, dB SPL")
        @DecimalMin("20")
        @DecimalMax("180")
        Double levelDbSpl,
    @Schema(description = "RMS voltage at the amplifier with the test tone of the plan, V")
        @DecimalMin("0.001")
        @DecimalMax("500")
        Double gainV,
    @Schema(
            description =
                "Arrival at the main seat with all settings made, ms; only the differences between"
                    + " channels count")
        Double arrivalMs,
    @Schema(description = "Polarity found: 1 pushes outward, -1 inward") Integer polarity) {}
