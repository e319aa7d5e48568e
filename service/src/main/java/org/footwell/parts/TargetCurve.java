package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.ExactlyOne;

/** A wanted curve; only its shape counts. */
@ExactlyOne({"points", "tilt"})
@Ascending("points.*.frequency_hz")
public record TargetCurve(
    @Schema(
            description =
                "Points of the curve, straight over the logarithm of frequency"
                    + " between them, flat beyond")
        @Size(min = 1, max = 200)
        List<@NotNull LevelAt> points,
    @Schema(description = "A straight fall or rise") Slope tilt) {

  /** A line over the logarithm of frequency. */
  public record Slope(
      @Schema(description = "Rise towards high frequencies, dB per octave; negative falls")
          @NotNull
          @DecimalMin("-12")
          @DecimalMax("12")
          Double slopeDbPerOctave,
      @Schema(
              description =
                  "Flat below this frequency, Hz, and tilted above it; absent: tilted everywhere")
          @DecimalMin("1")
          @DecimalMax("100000")
          Double cornerHz) {}

  private static final double REFERENCE_HZ = 1000;

  /** Flat. */
  public static TargetCurve flat() {
    return new TargetCurve(null, new Slope(0.0, null));
  }

  /** The curve in dB over Hz. */
  public DoubleUnaryOperator curve() {
    if (points != null) {
      return LevelAt.curve(points);
    }
    double perOctave = tilt.slopeDbPerOctave();
    Double corner = tilt.cornerHz();
    return corner == null
        ? f -> perOctave * octaves(f, REFERENCE_HZ)
        : f -> perOctave * Math.max(0, octaves(f, corner));
  }

  private static double octaves(double f, double from) {
    return Math.log(f / from) / Math.log(2);
  }
}
