package org.footwell.parts.offer;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import java.util.Arrays;

/** Outside of something rectangular, or the room there is for it. */
public record OuterSize(
    @Schema(description = "Width, mm") @NotNull @DecimalMin("1") @DecimalMax("5000") Double widthMm,
    @Schema(description = "Height, mm") @NotNull @DecimalMin("1") @DecimalMax("5000")
        Double heightMm,
    @Schema(description = "Depth, mm") @NotNull @DecimalMin("1") @DecimalMax("5000")
        Double depthMm) {

  /** Whether it goes into a room, turned upright or on any of its sides. */
  public boolean fitsInto(OuterSize room) {
    double[] own = sorted();
    double[] there = room.sorted();
    return own[0] <= there[0] && own[1] <= there[1] && own[2] <= there[2];
  }

  private double[] sorted() {
    double[] sides = {widthMm, heightMm, depthMm};
    Arrays.sort(sides);
    return sides;
  }
}
