package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.signal.SectionKind;

/** A filter of a channel's equaliser, as crossover-filters and response-correction have it. */
public record ParametricFilter(
    @Schema(description = "Kind of filter") @NotNull SectionKind kind,
    @Schema(description = "Its frequency, Hz") @NotNull @DecimalMin("5") @DecimalMax("40000")
        Double frequencyHz,
    @Schema(description = "Quality factor; of no effect on kinds without")
        @DecimalMin("0.05")
        @DecimalMax("100")
        Double q,
    @Schema(description = "Gain, dB; of no effect on kinds without")
        @DecimalMin("-40")
        @DecimalMax("40")
        Double gainDb) {}
