package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;

/** A point in vehicle axes as ISO 8855 names them; the origin is up to the caller. */
public record Position(
    @Schema(description = "Forward, m; behind the origin is negative")
        @NotNull
        @DecimalMin("-20")
        @DecimalMax("20")
        Double xM,
    @Schema(description = "To the left as the driver sees it, m; right of the origin is negative")
        @NotNull
        @DecimalMin("-20")
        @DecimalMax("20")
        Double yM,
    @Schema(description = "Up, m; below the origin is negative")
        @NotNull
        @DecimalMin("-20")
        @DecimalMax("20")
        Double zM) {

  /** How far it is to another, m. */
  public double distanceTo(Position other) {
    double x = xM - other.xM;
    double y = yM - other.yM;
    double z = zM - other.zM;
    return Math.sqrt(x * x + y * y + z * z);
  }

  /** Half way to another. */
  public Position middleTo(Position other) {
    return new Position((xM + other.xM) / 2, (yM + other.yM) / 2, (zM + other.zM) / 2);
  }
}
