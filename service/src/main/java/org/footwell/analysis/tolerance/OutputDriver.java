package org.footwell.analysis.tolerance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;

/** What one input, or a group of them, does to an output. */
public record OutputDriver(
    @Schema(description = "The input by its path, or the group") @NotNull String input,
    @Schema(
            description =
                "1 and one more for each other input that clearly does more, its interval lying above"
                    + " this one's: inputs of the same rank are not told apart by these samples")
        @NotNull
        Integer rank,
    @Schema(
            description =
                "Spearman's rank correlation with the output: 1 where the output always rises with it,"
                    + " -1 where it always falls, 0 where neither")
        @NotNull
        Estimate rankCorrelation,
    @Schema(
            description =
                "First-order Sobol' index, where asked for: share of the variance that knowing it"
                    + " exactly takes away on average")
        Estimate firstOrder,
    @Schema(
            description =
                "Total Sobol' index, where asked for: share of the variance in which it has a part,"
                    + " alone or together with others")
        Estimate total,
    @Schema(
            description =
                "Standard deviation of the output that is left when this input is known exactly: from"
                    + " the first-order index where asked for, or else from the rank correlation, as if"
                    + " the output rose or fell evenly")
        @NotNull
        Double deviationLeft) {

  /** How much it does, in the figure the inputs are ranked by. */
  Estimate strength() {
    return strength(firstOrder, rankCorrelation);
  }

  static Estimate strength(Estimate firstOrder, Estimate rankCorrelation) {
    return firstOrder == null ? rankCorrelation.size() : firstOrder;
  }
}
