package org.footwell.acoustic.enclosure;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.acoustic.enclosure.lowend.BoxLimits;
import org.footwell.acoustic.enclosure.lowend.BoxPoint;
import org.footwell.acoustic.enclosure.lowend.BoxResponse;
import org.footwell.calculation.Built;

/** What a vented box makes of a driver. */
@Built
public record VentedBoxResult(
    @Schema(description = "Volume with driver, bracing and port in it, litre") double grossVolumeL,
    @Schema(description = "Compliance ratio: vas over volume") double alpha,
    @Schema(description = "Total Q in free air, the source's resistance in it") double qts,
    @Schema(description = "Tuning of the box: given, or found for the port, Hz") double fbHz,
    @Schema(description = "Tuning ratio: tuning over resonance in free air") double tuningRatio,
    @Schema(description = "Net volume of air: given, or found, litre") double volumeL,
    @Schema(description = "The box that was found, where no volume was given") Alignment alignment,
    @Schema(description = "The port or ports") Vent vent,
    @Schema(
            description =
                "The low end of the response, without the coil's inductance and the filters of the"
                    + " channel")
        BoxResponse response,
    @Schema(description = "Displacement and what it allows") BoxLimits limits,
    @Schema(
            description =
                "With the cabin's volume: frequency below which it is a pressure chamber that adds"
                    + " to the level at 1 m, Hz")
        Double pressureCornerHz,
    @Schema(description = "The curve") List<BoxPoint> points) {

  /** A box whose response is that of a filter of order four, leaks the only loss. */
  public record Alignment(
      @Schema(description = "Which filter: the total Q and ql decide") Family family,
      @Schema(description = "Ripple above the reference level, dB; 0 but for Chebyshev")
          double rippleDb,
      @Schema(description = "Net volume of air, litre") double volumeL,
      @Schema(description = "Tuning, Hz") double fbHz) {

    /** Filters of order four, from drivers of low Q to those of high Q. */
    public enum Family {
      /** Falls off early and at first as one of order three, without ripple. */
      QUASI_BUTTERWORTH,
      /** Maximally flat, within 1 % of its coefficients. */
      BUTTERWORTH,
      /** Deepest, with a ripple. */
      CHEBYSHEV
    }
  }

  /** A port that fits the tuning, and the air in it. */
  public record Vent(
      @Schema(description = "Inside area of all ports, cm²") double areaCm2,
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
                  "Area of all ports at which that speed would be 5 % of the speed of sound, cm²;"
                      + " the length follows from it")
          double quietAreaCm2) {}
}
