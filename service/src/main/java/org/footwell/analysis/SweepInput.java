package org.footwell.analysis;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needs;
import org.footwell.parts.StandardValues;

/** One input and the values it takes. */
@ExactlyOne({"values", "names", "count", "step", "series"})
@Needs(
    field = "count",
    beside = {"from", "to"})
@Needs(
    field = "step",
    beside = {"from", "to"})
@Needs(
    field = "series",
    beside = {"from", "to"})
@Needs(field = "spacing", beside = "count")
@Ascending({"from", "to"})
public record SweepInput(
    @Schema(
            description =
                "A single value of the request, as a dotted path or a JSON Pointer; entries of lists"
                    + " by their index from 0, or by their id or name")
        @NotNull
        @Size(min = 1, max = 300)
        String path,
    @Schema(description = "The values themselves") @Size(min = 1, max = Sweep.MOST_POINTS)
        List<@NotNull @DecimalMin("-1000000000") @DecimalMax("1000000000") Double> values,
    @Schema(description = "The values themselves where they are no numbers")
        @Size(min = 1, max = 1_000)
        List<@NotNull @Size(max = 300) String> names,
    @Schema(description = "First value of a range, in the unit of the input")
        @DecimalMin("-1000000000")
        @DecimalMax("1000000000")
        Double from,
    @Schema(description = "Last value of a range, in the unit of the input")
        @DecimalMin("-1000000000")
        @DecimalMax("1000000000")
        Double to,
    @Schema(description = "So many values from the first to the last, both included")
        @Min(2)
        @Max(1_000_000_000)
        Integer count,
    @Schema(description = "How so many values are spaced: linear where it is not said")
        Spacing spacing,
    @Schema(description = "Distance from each value to the next, in the unit of the input")
        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1000000000")
        Double step,
    @Schema(description = "The standard values from the first to the last. " + MEANT)
        StandardValues series) {

  /** How the values of a range lie. */
  public enum Spacing {
    /** With equal differences. */
    LINEAR,
    /** With equal ratios. */
    LOGARITHMIC
  }

  /** What the series are. */
  static final String MEANT =
      "e6 to e96: preferred numbers for resistors, capacitors and coils, IEC 60063; r5 to r40: those of"
          + " ISO 3; conductors: cross-sections in mm², IEC 60228; fuses: rated currents in A, ISO 8820";
}
