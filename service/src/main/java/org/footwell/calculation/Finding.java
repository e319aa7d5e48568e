package org.footwell.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import java.util.Map;

/** Something a fitter should know about the answer. */
@Built
public record Finding(
    @Schema(description = "How bad it is") @NotNull Verdict level,
    @Schema(description = "Stable code") @NotNull String code,
    @Schema(description = "The sentence a fitter would say; empty with findings=codes") @NotNull
        String text,
    @Schema(description = "What to do about it, where something is to be done") String advice,
    @Schema(description = "In a plan, the part of it that the finding is about") String subject,
    @Schema(description = "JSON Pointer to the field of the request it is about") @NotNull
        String pointer,
    @Schema(description = "All fields it is about, where it is about several alike")
        List<String> places,
    @Schema(description = "The value found, in the unit of the sentence") Double value,
    @Schema(description = "The limit it is held against, in the same unit") Double limit,
    @Schema(
            description =
                "With findings=codes, what else fills its sentence, by the names that /codes.json"
                    + " tells: numbers, names, and our words by their codes")
        Map<String, Object> arguments) {

  /** The sentence and what to do about it. */
  public String inFull() {
    return advice == null ? text : text + " " + advice;
  }
}
