package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;

/** A source with line outputs. */
public record HeadUnit(
    @Schema(
            description =
                "RMS voltage of a full-scale sine at the chosen volume, still clean, V, with the"
                    + " next device connected")
        @NotNull
        Double cleanOutputV,
    Double noiseUv) {}
