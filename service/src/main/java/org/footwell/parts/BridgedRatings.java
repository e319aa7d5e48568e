package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.parts.Ratings.Point;

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
  public Ratings beside(Ratings single) {
    return new Ratings(
        supplyV == null ? single.supplyV() : supplyV,
        basis == null ? single.basis() : basis,
        points,
        true,
        false);
  }
}
