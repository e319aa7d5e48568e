package org.footwell.analysis.tolerance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Built;

/** A request to a calculation, and how well its numbers are known. */
@Built
public record ToleranceRequest(
    @Schema(description = "The request to the calculation, as its own POST takes it") @NotNull
        Map<String, Object> request,
    @Schema(description = "Numbers of the request that are known within a tolerance only")
        @Size(max = 1000)
        List<@NotNull UncertainInput> inputs,
    @Schema(
            description =
                "Whether numbers the request states, and inputs does not name, have the usual"
                    + " tolerance of their kind: of data sheets, tape measures and meters. The answer"
                    + " lists what was assumed")
        Boolean usualTolerances,
    @Schema(
            description =
                "Numbers of the result that are wanted, dotted or as JSON Pointers; an entry of a list"
                    + " by its index, id or name. Without it those outside of lists, at most 20")
        @Size(min = 1, max = ToleranceRequest.MOST_OUTPUTS)
        List<@NotNull String> outputs,
    @Schema(description = "How often the request is answered with other values of its inputs")
        @Min(ToleranceRequest.LEAST_COUNT)
        @Max(100000)
        Integer sampleCount,
    @Schema(description = "Another seed draws other samples; the same one draws the same")
        @Min(0)
        @Max(2147483647)
        Integer seed,
    @Schema(
            description =
                "Whether to tell as well, by Sobol' indices, which part of the variance each input makes:"
                    + " needed where outputs do not rise or fall steadily with their inputs. Costs"
                    + " sample_count times the number of inputs and two")
        Boolean indices) {

  static final int MOST_OUTPUTS = 20;
  static final int LEAST_COUNT = 100;

  /** Enough for the usual question; a power of two, which suits the points best. */
  private static final int USUAL_COUNT = 1024;

  public ToleranceRequest {
    inputs = inputs == null ? List.of() : inputs;
    usualTolerances = usualTolerances == null ? Boolean.FALSE : usualTolerances;
    sampleCount = sampleCount == null ? Integer.valueOf(USUAL_COUNT) : sampleCount;
    seed = seed == null ? Integer.valueOf(1) : seed;
    indices = indices == null ? Boolean.FALSE : indices;
  }
}
