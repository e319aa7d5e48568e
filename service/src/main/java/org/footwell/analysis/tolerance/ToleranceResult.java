package org.footwell.analysis.tolerance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.Arrays;
import java.util.List;
import org.footwell.calculation.Verdict;

/** What an answer is worth with its inputs known within tolerances only. */
public record ToleranceResult(
    @Schema(description = "Samples drawn") @NotNull Integer sampleCount,
    @Schema(description = "How often the request was answered") @NotNull Integer runCount,
    @Schema(description = "Verdict with the inputs exactly as stated") @NotNull Verdict stated,
    @Schema(description = "Shares of the samples by their verdict, 0 to 1") @NotNull
        VerdictShares verdicts,
    @Schema(description = "The numbers wanted, in the order they were asked for") @NotNull
        List<OutputBudget> outputs,
    @Schema(
            description =
                "The inputs that were varied, those assumed to have a usual tolerance last")
        @NotNull
        List<SampledInput> inputs,
    @Schema(
            description =
                "Why runs were refused, the commonest first; none where all were answered")
        @NotNull
        List<RefusedRuns> refused) {

  /** Shares of the samples by their verdict. */
  public record VerdictShares(
      @Schema(description = "Nothing to remark") @NotNull Double ok,
      @Schema(description = "Worth knowing") @NotNull Double note,
      @Schema(description = "Not as a careful fitter would leave it") @NotNull Double warning,
      @Schema(description = "Not to be built like this") @NotNull Double stop,
      @Schema(description = "Not answered, as where a value is beyond what its field allows")
          @NotNull
          Double refused) {

    static VerdictShares of(Runs runs, int samples) {
      return new VerdictShares(
          runs.share(Verdict.OK, samples),
          runs.share(Verdict.NOTE, samples),
          runs.share(Verdict.WARNING, samples),
          runs.share(Verdict.STOP, samples),
          runs.share(null, samples));
    }

    double of(Verdict verdict) {
      return switch (verdict) {
        case OK -> ok;
        case NOTE -> note;
        case WARNING -> warning;
        case STOP -> stop;
      };
    }

    /** Share of those that are worse than a verdict. */
    double worseThan(Verdict verdict) {
      return Arrays.stream(Verdict.values())
          .filter(one -> one.compareTo(verdict) > 0)
          .mapToDouble(this::of)
          .sum();
    }
  }

  /** An input as it was varied. */
  public record SampledInput(
      @Schema(description = "The number in the request") @NotNull String path,
      @Schema(description = "What the request states") @NotNull Double stated,
      @Schema(description = "Tolerance to either side, in the unit of the number") @NotNull
          Double plusMinus,
      @Schema(description = "How the true value lies around the stated one") @NotNull
          Distribution distribution,
      @Schema(description = "Standard deviation, in the unit of the number") @NotNull
          Double deviation,
      @Schema(description = "What moves together with it") String group,
      @Schema(description = "Where the tolerance comes from, if it was assumed") String assumed) {}
}
