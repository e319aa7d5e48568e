package org.footwell.fitting.carpentry;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** A box and the panels it is glued of. */
public record BoxPanelsResult(
    @Schema(description = "Volume inside, all that is in it included, litre") double grossVolumeL,
    @Schema(description = "Volume between the outer faces, litre") double outsideVolumeL,
    @Schema(description = "Inner faces") Size inside,
    @Schema(description = "Outer faces") Size outside,
    @Schema(description = "Lean of the back from the vertical, degrees; 0 in a rectangular box")
        double leanDeg,
    @Schema(description = "Area of all panels before mitring and holes, without waste, m²")
        double boardAreaM2,
    @Schema(description = "Mass of the panels, the driver's hole taken out, kg") double massKg,
    @Schema(
            description =
                "The panels; sides cover the ends of all others, top and bottom those of"
                    + " front and back")
        List<Panel> panels) {

  /** A size between faces. */
  public record Size(
      @Schema(description = "Width, mm") double widthMm,
      @Schema(description = "Height, mm") double heightMm,
      @Schema(description = "Depth at the bottom, mm") double depthMm,
      @Schema(description = "Depth at the top, mm; the same in a rectangular box")
          double topDepthMm) {}

  /** A panel as it is cut from the board. */
  public record Panel(
      @Schema(description = "Which one") Name name,
      @Schema(description = "How many alike") int count,
      @Schema(description = "Length, mm: upright for sides, across the box for the others")
          double lengthMm,
      @Schema(description = "Width, mm, over its larger face or end") double widthMm,
      @Schema(description = "Width of a tapered side at its top, mm") Double topWidthMm,
      @Schema(description = "Thickness, mm") double thicknessMm,
      @Schema(description = "Mitre of the edge or edges at the leaning back, degrees from square")
          Double mitreDeg,
      @Schema(description = "Mass of one, mitred, without holes, kg") double massKg) {}

  /** The names of panels. */
  public enum Name {
    /** The one with the driver, upright. */
    FRONT,
    /** The one that leans in a wedge. */
    BACK,
    /** The upper one. */
    TOP,
    /** The lower one. */
    BOTTOM,
    /** Left and right, alike. */
    SIDE
  }
}
