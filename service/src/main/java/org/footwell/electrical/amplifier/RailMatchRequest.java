package org.footwell.electrical.amplifier;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;

/** An amplifier and what hangs on it. Exactly one of {@code rails} and {@code ratings}. */
@Built
public record RailMatchRequest(
    @Schema(
            description =
                "Impedance really connected to the output, cable included when it is known, ohm;"
                    + " the whole load of a bridge")
        @NotNull
        Double loadOhm,
    @Schema(description = "The amplifier by its rails. Exactly one of rails and ratings")
        Rails rails,
    @Schema(description = "The amplifier by its published powers. Exactly one of rails and ratings")
        Ratings ratings,
    @Schema(description = "Whether the load hangs between two channels") Boolean bridged,
    Boolean supplyRegulated,
    Double minimumOhm,
    Double minimumBridgedOhm,
    @Schema(description = "The driver, or all drivers on this output taken together") Driver driver,
    @Schema(
            description =
                "Supply voltage the answer is for, V; the one that rails or ratings are stated at"
                    + " when not given")
        Double supplyV) {

  public RailMatchRequest {
    bridged = bridged == null ? Boolean.FALSE : bridged;
    supplyRegulated = supplyRegulated == null ? Boolean.FALSE : supplyRegulated;
  }

  /** What hangs on the output, as its maker rates it. */
  public record Driver(
      @Schema(description = "Power it bears continuously, W; the sum of several drivers") @NotNull
          Double continuousPowerW,
      @Schema(description = "Rated impedance, ohm; of several drivers as wired") @NotNull
          Double ratedOhm) {}
}
