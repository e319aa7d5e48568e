package org.footwell.enclosure;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.lowend.BoxLimits;
import org.footwell.lowend.BoxPoint;
import org.footwell.lowend.BoxResponse;

/** What a vented box makes of a driver. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record VentedBoxResult(
    @Schema(description = "Volume with driver, bracing and port in it, litre") double grossVolumeL,
    @Schema(description = "Compliance ratio: vas over volume") double alpha,
    @Schema(description = "Total Q in free air, the source's resistance in it") double qts,
    @Schema(description = "Tuning of the box: given, or found for the port, Hz") double fbHz,
    @Schema(description = "Tuning ratio: tuning over resonance in free air") double tuningRatio,
    @Schema(description = "The port or ports") Vent vent,
    @Schema(description = "The low end of the response") BoxResponse response,
    @Schema(description = "Displacement and what it allows") BoxLimits limits,
    @Schema(description = "The curve") List<BoxPoint> points) {

  /** A port that fits the tuning, and the air in it. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Vent(
      @Schema(description = "Inside area of all ports, cm2") double areaCm2,
      @Schema(description = "Length of each port itself: given, or found for the tuning, mm")
          double lengthMm,
      @Schema(description = "Length of the air that moves, end corrections in it, mm")
          double effectiveLengthMm,
      @Schema(description = "Volume of all ports with their walls, litre, all of it in the box")
          double displacementL,
      @Schema(description = "Lowest resonance of the port as an open pipe, Hz") double resonanceHz,
      @Schema(description = "Largest air speed in the range at the stated drive, peak, m/s")
          double largestVelocityMPerS,
      @Schema(description = "Where it is, Hz") double largestVelocityHz,
      @Schema(
              description =
                  "Area of all ports at which that speed would be 5 % of the speed of sound, cm2;"
                      + " the length follows from it")
          double quietAreaCm2) {}
}
