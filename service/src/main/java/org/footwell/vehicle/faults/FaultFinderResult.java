package org.footwell.vehicle.faults;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import org.footwell.calculation.Built;

/** What is wrong in a vehicle, as far as what was measured tells. */
@Built
public record FaultFinderResult(
    @Schema(description = "How many figures were measured that the plan predicts") int figureCount,
    @Schema(
            description =
                "Confidence that nothing is wrong that would show in what was measured, 0 to 1")
        double soundConfidence,
    @Schema(
            description =
                "Sum of the squares of all differences from the plan, each over its error, where"
                    + " nothing is wrong")
        double soundChiSquare,
    @Schema(description = "The same with the first explanation") double chiSquare,
    @Schema(
            description =
                "What that sum is on average: figures, less mean values taken off and figures fitted")
        int degrees,
    @Schema(
            description =
                "Probability that errors alone give such a sum or a larger one; absent where nothing"
                    + " is left to judge by")
        Double fitProbability,
    @Schema(description = "Whether the first explanation agrees with what was measured")
        boolean fits,
    @Schema(
            description =
                "What would explain it, the most confident first; with unlisted_confidence their"
                    + " confidences are 1 together")
        @NotNull
        List<Explanation> explanations,
    @Schema(description = "Confidence of all that is not listed, 0 to 1") double unlistedConfidence,
    @Schema(
            description =
                "What to measure next to tell apart the first two explanations that are left, the"
                    + " most telling first")
        @NotNull
        List<NextMeasurement> measureNext,
    @Schema(description = "Faults that would not show in what was measured, each with its place")
        @NotNull
        List<FaultLine> unseen) {

  /** Faults that explain what was measured. */
  public record Explanation(
      @Schema(description = "Confidence, 0 to 1; of all that is alike together") double confidence,
      @Schema(description = "The faults, one or two; none where nothing is wrong") @NotNull
          List<FaultLine> faults,
      @Schema(description = "Sum of the squares of all differences with them, each over its error")
          double chiSquare,
      @Schema(
              description =
                  "What cannot be told from them by what was measured, likelier ones first")
          @NotNull
          List<Alternative> alike) {}

  /** Faults that explain it as well as others. */
  public record Alternative(
      @Schema(description = "The faults, one or two") @NotNull List<FaultLine> faults) {}

  /** Something that was not measured. */
  public record NextMeasurement(
      @Schema(description = "What to measure") @NotNull FigureKind measure,
      @Schema(description = "Id of the channel") String channel,
      @Schema(description = "Id of the amplifier") String amplifier,
      @Schema(description = "Frequency at which it tells most, Hz") Double frequencyHz,
      @Schema(description = "How far apart the two lie there, in units of its error")
          double errorsApart,
      @Schema(description = "Whether it was measured already, and only doing it again tells more")
          boolean again) {}
}
