package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;

/** What a driver must fit into. */
public record DriverOpening(
    @Schema(
            description =
                "Largest cut-out of a driver, mm: the opening itself, or what an adapter ring makes"
                    + " of it")
        @NotNull
        @DecimalMin("5")
        @DecimalMax("1000")
        Double cutOutMm,
    @Schema(
            description =
                "Largest depth of a driver behind its mounting face, mm, with the ring before and the"
                    + " air wanted behind taken into account")
        @NotNull
        @DecimalMin("1")
        @DecimalMax("600")
        Double depthMm) {}
