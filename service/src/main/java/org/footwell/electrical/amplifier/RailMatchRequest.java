package org.footwell.electrical.amplifier;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
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
        @DecimalMin("0.25")
        @DecimalMax("600")
        Double loadOhm,
    @Schema(description = "The amplifier by its rails. Exactly one of rails and ratings")
        Rails rails,
    @Schema(description = "The amplifier by its published powers. Exactly one of rails and ratings")
        Ratings ratings,
    @Schema(description = "Whether the load hangs between two channels") Boolean bridged,
    @Schema(
            description =
                "Whether the amplifier regulates its rails, so that power does not follow the"
                    + " supply of the vehicle; otherwise voltages follow it in proportion")
        Boolean supplyRegulated,
    @Schema(description = "Smallest load the maker allows on one channel, rated impedance, ohm")
        @DecimalMin("0.25")
        @DecimalMax("600")
        Double minimumOhm,
    @Schema(
            description =
                "Smallest load the maker allows on two channels bridged, rated impedance, ohm;"
                    + " absent: twice minimum_ohm, for each half sees half the load")
        @DecimalMin("0.25")
        @DecimalMax("600")
        Double minimumBridgedOhm,
    @Schema(description = "The driver, or all drivers on this output taken together") Driver driver,
    @Schema(
            description =
                "Supply voltage the answer is for, V; the one that rails or ratings are stated at"
                    + " when not given")
        @DecimalMin("8")
        @DecimalMax("32")
        Double supplyV) {

  public RailMatchRequest {
    bridged = bridged == null ? Boolean.FALSE : bridged;
    supplyRegulated = supplyRegulated == null ? Boolean.FALSE : supplyRegulated;
  }

  /** What hangs on the output, as its maker rates it. */
  public record Driver(
      @Schema(description = "Power it bears continuously, W; the sum of several drivers")
          @NotNull
          @DecimalMin("0.1")
          @DecimalMax("20000")
          Double continuousPowerW,
      @Schema(description = "Rated impedance, ohm; of several drivers as wired")
          @NotNull
          @DecimalMin("0.25")
          @DecimalMax("600")
          Double ratedOhm) {}
}
