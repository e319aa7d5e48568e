package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** A point of a curve of levels, straight over the logarithm of frequency between its points. */
public record LevelAt(
    @Schema(description = "Frequency, Hz, rising from point to point")
        @NotNull
        @DecimalMin("1")
        @DecimalMax("100000")
        Double frequencyHz,
    @Schema(description = "Level there, dB") @NotNull @DecimalMin("-200") @DecimalMax("200")
        Double levelDb) {

  /** The curve in dB over Hz: flat below the first point and above the last. */
  public static DoubleUnaryOperator curve(List<LevelAt> points) {
    return f -> at(points, f);
  }

  private static double at(List<LevelAt> points, double f) {
    LevelAt before = points.get(0);
    if (f <= before.frequencyHz()) {
      return before.levelDb();
    }
    for (LevelAt next : points) {
      if (f < next.frequencyHz()) {
        double share =
            Math.log(f / before.frequencyHz())
                / Math.log(next.frequencyHz() / before.frequencyHz());
        return before.levelDb() + share * (next.levelDb() - before.levelDb());
      }
      before = next;
    }
    return before.levelDb();
  }
}
