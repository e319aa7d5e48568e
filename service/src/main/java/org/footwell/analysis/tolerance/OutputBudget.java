package org.footwell.analysis.tolerance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import org.footwell.calculation.Built;

/** How far one number of the result may be off, and what drives it. In its own unit. */
@Built
public record OutputBudget(
    @Schema(description = "The number of the result") @NotNull String path,
    @Schema(
            description =
                "What it is with the inputs exactly as stated; left out where there is none")
        Double stated,
    @Schema(
            description =
                "In how many samples there was such a number; with fewer than 10 no figures")
        @NotNull
        Integer answeredCount,
    @Schema(description = "Mean") Double mean,
    @Schema(description = "Standard deviation") Double deviation,
    @Schema(description = "5 of 100 samples are below it") Double p5,
    @Schema(description = "Half of the samples are below it") Double p50,
    @Schema(description = "95 of 100 samples are below it") Double p95,
    @Schema(
            description =
                "The inputs that do most, at most 20; none where the number does not change")
        @NotNull
        List<OutputDriver> drivers) {

  /** Half of the range that 90 of 100 samples lie in. */
  double plusMinus() {
    return (p95 - p5) / 2;
  }

  /** The same with the input known exactly that does most. */
  double plusMinusLeft() {
    return plusMinus() * drivers.get(0).deviationLeft() / deviation;
  }
}
