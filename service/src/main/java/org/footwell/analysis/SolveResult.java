package org.footwell.analysis;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.InUnitOf;

/** What is sought, what it leads to, and what was seen on the way. */
public record SolveResult(
    @Schema(
            description =
                "The value sought, the lowest where there are several; absent where there is none")
        @InUnitOf("input")
        Double value,
    @Schema(description = "The output there") @InUnitOf("output") Double reached,
    @Schema(description = "How often the calculation was asked to close in on it") int iterations,
    @Schema(description = "All values whose output is the target, lowest first")
        List<Crossing> crossings,
    @Schema(description = "What was seen from the lower bound to the upper") Seen seen) {

  /** A value whose output is the target. */
  public record Crossing(
      @Schema(description = "Value of the input") @InUnitOf("input") double value,
      @Schema(description = "The output there") @InUnitOf("output") double reached) {}

  /** What the output does between the bounds. */
  public record Seen(
      @Schema(description = "How many values were looked at") int valueCount,
      @Schema(description = "How many of them the calculation refuses") int refusedCount,
      @Schema(description = "How many of them have no such output") int absentCount,
      @Schema(description = "Smallest output") @InUnitOf("output") Double least,
      @Schema(description = "Value of the input there") @InUnitOf("input") Double leastAt,
      @Schema(description = "Largest output") @InUnitOf("output") Double most,
      @Schema(description = "Value of the input there") @InUnitOf("input") Double mostAt) {}
}
