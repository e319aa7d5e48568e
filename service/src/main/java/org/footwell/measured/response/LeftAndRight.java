package org.footwell.measured.response;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** Two channels that should be alike. */
public record LeftAndRight(
    @Schema(description = "Id of the left channel") @NotNull @Size(min = 1, max = 60) String left,
    @Schema(description = "Id of the right channel") @NotNull @Size(min = 1, max = 60)
        String right) {}
