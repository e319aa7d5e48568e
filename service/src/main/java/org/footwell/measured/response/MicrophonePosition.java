package org.footwell.measured.response;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** One position of the microphone. */
public record MicrophonePosition(
    @Schema(description = "Name, unlike any other position's") @NotNull @Size(min = 1, max = 60)
        String id,
    @Schema(description = "How much it counts for the listening position") Double weight) {

  public MicrophonePosition {
    weight = weight == null ? Double.valueOf(1) : weight;
  }
}
