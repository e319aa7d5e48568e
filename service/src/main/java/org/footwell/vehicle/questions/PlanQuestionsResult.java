package org.footwell.vehicle.questions;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.List;

/** The questions a plan poses. */
public record PlanQuestionsResult(
    @Schema(description = "How many there are") int questionCount,
    @Schema(description = "How many of them can be answered as the plan stands")
        int answerableCount,
    @Schema(description = "Share of them that can be answered, 0 to 1") double answerableShare,
    @Schema(description = "The questions, calculation by calculation") @NotNull
        List<Question> questions) {

  /** One question. */
  public record Question(
      @Schema(description = "Id of the calculation") @NotNull String calculation,
      @Schema(description = "What it is about in a few words") @NotNull String title,
      @Schema(description = "Place of the plan it is about; empty for the plan as a whole") @NotNull
          String about,
      @Schema(description = "Where to post the plan for its answer") @NotNull String address,
      @Schema(
              description =
                  "Whether the plan has all it needs; what depends on values is told when it is"
                      + " asked")
          boolean answerable,
      @Schema(description = "JSON Pointers to what the plan lacks for it") @NotNull
          List<String> missing) {}
}
