package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;

/** A large volume that leaks: a door, the boot below a rear shelf. */
public record LeakyBaffle(
    @Schema(description = "Volume of air behind, litre") @NotNull Double volumeL,
    @Schema(
            description =
                "Q of all leaks at the resonance the driver would have in that volume closed: below"
                    + " 1 more air goes through the leaks than into compression there")
        @NotNull
        @DecimalMin("0.02")
        @DecimalMax("100")
        Double ql,
    @Schema(
            description =
                "Whether what leaks reaches the listener and cancels bass there, as from service"
                    + " holes in the inner door panel; false when it goes outdoors")
        Boolean leakHeard) {

  public LeakyBaffle {
    leakHeard = leakHeard == null ? Boolean.TRUE : leakHeard;
  }
}
