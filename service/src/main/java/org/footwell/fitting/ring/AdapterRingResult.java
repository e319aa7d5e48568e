package org.footwell.fitting.ring;

import io.swagger.v3.oas.annotations.media.Schema;
import org.footwell.calculation.Built;
import org.footwell.fitting.ring.drawing.RingGeometry;
import org.footwell.fitting.ring.drawing.Walls;

/** Whether a driver fits, and the ring that makes it fit. */
@Built
public record AdapterRingResult(
    @Schema(description = "Whether no finding forbids it") boolean fits,
    @Schema(
            description =
                "Least ring thickness the depth behind asks for, mm; 0 when it needs none")
        double lowestThicknessMm,
    @Schema(
            description =
                "Largest ring thickness the grille allows, mm; negative when not even the driver"
                    + " alone has room; absent when no grille is given")
        Double highestThicknessMm,
    @Schema(description = "Thickness of this ring, mm") double thicknessMm,
    @Schema(description = "How far the driver is turned counter-clockwise, degrees")
        double turnedDeg,
    @Schema(description = "What is left") Room room,
    @Schema(description = "Least walls of the ring") Walls walls,
    @Schema(description = "The ring as it is drawn") RingGeometry ring,
    @Schema(description = "Face of the ring, holes taken out, cm²") double faceAreaCm2,
    @Schema(description = "Volume of the ring, cm³") double volumeCm3,
    @Schema(description = "Whole surface of the ring, cm²: what has to be sealed or painted")
        double surfaceCm2,
    @Schema(description = "Mass of the ring, g, fill counted") double massG,
    @Schema(description = "Thickness the driver's screws can hold in, in screw diameters")
        double screwEngagement) {

  /** Air left in each direction. Negative means it does not fit. */
  public record Room(
      @Schema(description = "Behind the driver, mm, the clearance included") double depthMm,
      @Schema(description = "Before the driver, mm, the clearance included; absent without grille")
          Double grilleMm,
      @Schema(description = "Around the magnet in the panel's cut-out, mm on each side")
          double magnetMm,
      @Schema(
              description =
                  "Around the basket in the panel's cut-out, mm on each side; by the driver's"
                      + " cut-out where the basket's own diameter is not given")
          double basketMm,
      @Schema(description = "How far the ring reaches beyond the panel's cut-out, mm on each side")
          double overlapMm,
      @Schema(description = "How far the ring reaches beyond the frame, mm on each side")
          double beyondFrameMm,
      @Schema(description = "Between ring and the limit of the panel, mm on each side")
          Double limitMm) {}
}
