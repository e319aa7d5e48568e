package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;

/** What sets the delays. */
public record Processor(
    @NotNull @DecimalMin("8000") @DecimalMax("384000") Double rateHz,
    @Schema(
            description =
                "Smallest step of a delay, samples; below 1 where steps are finer than a sample")
        @DecimalMin("0.001")
        @DecimalMax("1024")
        Double stepSamples,
    Double maximumDelayMs) {

  public Processor {
    stepSamples = stepSamples == null ? Double.valueOf(1) : stepSamples;
  }
}
