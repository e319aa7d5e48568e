package org.footwell.analysis.tolerance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.InUnitOf;
import org.footwell.calculation.rule.ExactlyOne;

/** A number of a request that is known within a tolerance only. */
@ExactlyOne({"plus_minus", "plus_minus_percent"})
public record UncertainInput(
    @Schema(
            description =
                "The number in the request, dotted or as a JSON Pointer; an entry of a list by its index,"
                    + " id or name")
        @NotNull
        @Size(min = 1, max = 200)
        String path,
    @Schema(
            description =
                "Tolerance to either side, in the unit of the number. Of a normal distribution 95 of"
                    + " 100 values lie within it, of the others all")
        @InUnitOf("path")
        @DecimalMin("0.000000001")
        @DecimalMax("1000000000")
        Double plusMinus,
    @Schema(description = "The same in percent of the number")
        @DecimalMin("0.000001")
        @DecimalMax("1000")
        Double plusMinusPercent,
    @Schema(description = "How the true value lies around the stated one")
        Distribution distribution,
    @Schema(
            description =
                "Inputs of the same group move together, up and down alike, such as two drivers of"
                    + " one batch; without it an input moves on its own")
        @Size(min = 1, max = 60)
        String group) {

  public UncertainInput {
    distribution = distribution == null ? Distribution.NORMAL : distribution;
  }
}
