package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** Where one channel hands over to another. */
public record Crossover(
    @Schema(description = "Name of the channel that plays below the frequency")
        @NotNull
        @Size(min = 1, max = 60)
        String lower,
    @Schema(description = "Name of the channel that plays above it")
        @NotNull
        @Size(min = 1, max = 60)
        String upper,
    @Schema(description = "Crossover frequency, Hz") @NotNull @DecimalMin("1") @DecimalMax("40000")
        Double frequencyHz) {}
