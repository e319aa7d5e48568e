package org.footwell.analysis;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import org.footwell.analysis.Crossings.Found;
import org.footwell.calculation.Built;
import org.footwell.calculation.InUnitOf;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.AtMostOne;
import org.footwell.parts.StandardValues;

/** A request of a calculation, and what of it is sought. */
@Built
@AtMostOne({"step", "series", "values"})
@Ascending({"from", "to"})
public record SolveRequest(
    @Schema(
            description =
                "The request as a single POST takes it; what is sought may be left out or stand there")
        @NotNull
        Map<String, Object> request,
    @Schema(
            description =
                "What is sought: a number of the request, as a dotted path or a JSON Pointer; entries"
                    + " of lists by their index from 0, or by their id or name")
        @NotNull
        @Size(min = 1, max = 300)
        String input,
    @Schema(description = "Least value of it to look at, in its unit")
        @InUnitOf("input")
        @NotNull
        @DecimalMin("-1000000000")
        @DecimalMax("1000000000")
        Double from,
    @Schema(description = "Largest, in its unit")
        @InUnitOf("input")
        @NotNull
        @DecimalMin("-1000000000")
        @DecimalMax("1000000000")
        Double to,
    @Schema(
            description =
                "Only whole multiples of this, in the unit of the input, such as the time step of a"
                    + " processor; of a whole number it is 1")
        @InUnitOf("input")
        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1000000000")
        Double step,
    @Schema(description = "Only values that parts are made in. " + SweepInput.MEANT)
        StandardValues series,
    @Schema(description = "Only these values, in the unit of the input")
        @InUnitOf("input")
        @Size(min = 1, max = Solve.MOST_VALUES)
        List<@NotNull @DecimalMin("-1000000000") @DecimalMax("1000000000") Double> values,
    @Schema(description = "What is to reach the target: a number of the result, by its path")
        @NotNull
        @Size(min = 1, max = 300)
        String output,
    @Schema(description = "What it is to reach, in its unit")
        @InUnitOf("output")
        @NotNull
        @DecimalMin("-1000000000")
        @DecimalMax("1000000000")
        Double target,
    @Schema(
            description =
                "From which side the output may miss the target where it cannot be met exactly")
        Side side) {

  public SolveRequest {
    side = side == null ? Side.NEAREST : side;
  }

  /** How far an output is from the target. */
  double off(Sample sample) {
    return Math.abs(sample.output() - target);
  }

  /** Whether an output is on the side that is wanted. */
  boolean allows(Sample sample) {
    return switch (side) {
      case NEAREST -> true;
      case AT_LEAST -> sample.output() >= target;
      case AT_MOST -> sample.output() <= target;
    };
  }

  /** The side of a jump that is taken. */
  Sample sideOf(Found jump) {
    return side == Side.NEAREST && off(jump.beyond()) < off(jump.here())
        ? jump.beyond()
        : jump.here();
  }
}
