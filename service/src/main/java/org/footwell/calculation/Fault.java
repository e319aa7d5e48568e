package org.footwell.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;

/** One thing that is wrong with a request. */
public record Fault(
    @Schema(description = "JSON Pointer to the faulty place, empty for the whole") @NotNull
        String pointer,
    @Schema(description = "Stable code") @NotNull String code,
    @Schema(description = "What is wrong, in a sentence") @NotNull String detail,
    @Schema(description = "What was given, shortened when long") String given,
    @Schema(description = "What is allowed") String allowed) {}
