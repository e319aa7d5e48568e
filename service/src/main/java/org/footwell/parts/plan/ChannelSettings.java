package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** What was really set on a channel; what is left out counts as advised. */
public record ChannelSettings(
    @Schema(description = "Id of the channel") @NotNull @Size(min = 1, max = 40) String channel,
    @Schema(description = "RMS voltage at its terminals with the test tone of the plan, V")
        @DecimalMin("0.001")
        @DecimalMax("500")
        Double gainV,
    Double trimDb,
    @Schema(description = "Delay as the processor shows it, ms") Double delayMs,
    @Schema(description = "Polarity as the processor shows it") Integer polarity) {}
