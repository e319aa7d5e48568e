package org.footwell.analysis.tolerance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;

/** Runs that the calculation refused for one reason. */
public record RefusedRuns(
    @Schema(description = "JSON Pointer to the faulty place in the request to the calculation")
        @NotNull
        String pointer,
    @Schema(description = "Code of the fault") @NotNull String code,
    @Schema(description = "In how many runs") @NotNull Integer runCount) {}
