package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;

/** The modulus of an impedance at a frequency. */
public record ModulusAt(
    @NotNull @DecimalMin("10") @DecimalMax("40000") Double frequencyHz,
    @Schema(description = "Modulus of the impedance, ohm")
        @NotNull
        @DecimalMin("0.01")
        @DecimalMax("10000")
        Double modulusOhm) {}
