package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.footwell.calculation.Run;

/** A wanted curve. Exactly one of {@code points} and {@code tilt}; only its shape counts. */
public record TargetCurve(
    @Schema(
            description =
                "Points of the curve, rising in frequency; straight over the logarithm of frequency"
                    + " between them, flat beyond")
        @Size(min = 1, max = 200)
        List<@NotNull LevelAt> points,
    @Schema(description = "A straight fall or rise instead of points") Slope tilt) {

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

  /** Refuses what is no curve. */
  public void require(String at, Run run) {
    Map<String, Object> either = new LinkedHashMap<>();
    either.put("points", points);
    either.put("tilt", tilt);
    run.exactlyOneOf(at, either);
    if (points != null) {
      Rising.require(
          at + "/points", "/frequency_hz", points.stream().map(LevelAt::frequencyHz).toList(), run);
    }
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
