package org.footwell.electrical.amplifier;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.electrical.amplifier.Ratings.Point;

/** Published powers of an amplifier, and what to predict from them. */
@Built
public record AmplifierRatingsRequest(
    @Schema(
            description =
                "Published powers of one channel, or with bridged of an amplifier that is only"
                    + " stated bridged")
        @NotNull
        Ratings ratings,
    @Schema(
            description =
                "Published powers of two of these channels bridged, to hold against the single"
                    + " ones; only beside ratings that are not bridged")
        BridgedRatings bridgedRatings,
    Boolean supplyRegulated,
    @Schema(
            description =
                "Loads to predict the clean power into, ohm, as connected: one channel and bridged"
                    + " alike")
        @NotNull
        @Size(min = 1, max = 24)
        List<@NotNull @DecimalMin("0.25") @DecimalMax("600") Double> loadsOhm,
    @Schema(
            description =
                "Supply voltages of the vehicle to predict for, V; absent: the one the powers are"
                    + " stated at")
        @Size(min = 1, max = 16)
        List<@NotNull @DecimalMin("9") @DecimalMax("32") Double> suppliesV) {

  public AmplifierRatingsRequest {
    supplyRegulated = supplyRegulated == null ? Boolean.FALSE : supplyRegulated;
  }

  /** Published powers of two channels bridged; one is enough. */
  public record BridgedRatings(
      @Schema(description = "Supply voltage they are stated at, V; absent: that of ratings")
          Double supplyV,
      @Schema(description = "What kind of power is stated; absent: that of ratings")
          Ratings.Basis basis,
      @Schema(description = "Loads across the bridge with the powers of the bridged pair")
          @NotNull
          @Size(min = 1, max = 12)
          List<@NotNull Point> points) {

    /** The same as ratings of their own, what is left out taken from the single channel's. */
    Ratings beside(Ratings single) {
      return new Ratings(
          supplyV == null ? single.supplyV() : supplyV,
          basis == null ? single.basis() : basis,
          points,
          true,
          false);
    }
  }
}
