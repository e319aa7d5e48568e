package org.footwell.measured.response;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.rule.Ascending;

/** An exponential sweep that was played. */
@Ascending({"from_hz", "to_hz"})
public record PlayedSweep(
    @Schema(description = "Frequency at its start, Hz")
        @NotNull
        @DecimalMin("1")
        @DecimalMax("20000")
        Double fromHz,
    @Schema(description = "Frequency at its end, Hz, at most half the rate")
        @NotNull
        @DecimalMin("20")
        @DecimalMax("96000")
        Double toHz,
    @Schema(description = "Its length, s") @NotNull @DecimalMin("0.05") @DecimalMax("40")
        Double durationS,
    @Schema(
            description =
                "Silence from the start of the recording to the start of the sweep as it was"
                    + " played, s; of no effect with a loopback")
        @DecimalMin("0")
        @DecimalMax("20")
        Double leadInS) {

  public PlayedSweep {
    leadInS = leadInS == null ? Double.valueOf(0) : leadInS;
  }

  /** Natural logarithm of its end over its start. */
  public double logRatio() {
    return Math.log(toHz / fromHz);
  }
}
