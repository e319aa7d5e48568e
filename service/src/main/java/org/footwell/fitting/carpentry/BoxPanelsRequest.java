package org.footwell.fitting.carpentry;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.AtMostOne;
import org.footwell.calculation.rule.Needs;

/**
 * A box to be cut. Two of width, height and depth, or the proportions of all three; a wedge has one of
 * top depth and back angle besides.
 */
@Built
@AtMostOne({"top_depth_mm", "back_angle_deg"})
@Needs(field = "height_per_width", beside = "depth_per_width")
@Needs(field = "depth_per_width", beside = "height_per_width")
@Keeps(TwoDimensions.class)
@Keeps(BoxWithinReach.class)
@Keeps(CutoutInFront.class)
public record BoxPanelsRequest(
    @NotNull Double volumeL,
    Double driverDisplacementL,
    Double bracingL,
    @Schema(description = "Volume of the port with its walls, litre")
        @DecimalMin("0")
        @DecimalMax("1000")
        Double portDisplacementL,
    @Schema(description = "Thickness of the board, mm") @NotNull @DecimalMin("3") @DecimalMax("60")
        Double boardMm,
    @Schema(
            description =
                "Thickness of the front with the driver, mm; that of the board when absent")
        @DecimalMin("3")
        @DecimalMax("120")
        Double frontBoardMm,
    @Schema(description = "Whether the dimensions and proportions given are outside or inside ones")
        @NotNull
        Measured measured,
    @Schema(description = "Width, mm. Two of width_mm, height_mm and depth_mm, or proportions")
        @DecimalMin("30")
        @DecimalMax("3000")
        Double widthMm,
    @Schema(description = "Height, mm") @DecimalMin("30") @DecimalMax("3000") Double heightMm,
    @Schema(description = "Depth from front to back, mm; of a wedge at its bottom, the deeper end")
        @DecimalMin("30")
        @DecimalMax("3000")
        Double depthMm,
    @Schema(description = "Height over width, instead of dimensions")
        @DecimalMin("0.05")
        @DecimalMax("20")
        Double heightPerWidth,
    @Schema(description = "Depth over width, instead of dimensions")
        @DecimalMin("0.05")
        @DecimalMax("20")
        Double depthPerWidth,
    @Schema(description = "Depth of a wedge at its top, mm") @DecimalMin("5") @DecimalMax("3000")
        Double topDepthMm,
    @Schema(description = "Lean of a wedge's back from the vertical, degrees, as a seat leans")
        @DecimalMin("0.5")
        @DecimalMax("60")
        Double backAngleDeg,
    @Schema(description = "Diameter of the hole for the driver, in the middle of the front, mm")
        @DecimalMin("20")
        @DecimalMax("1000")
        Double driverCutoutMm,
    @Schema(description = "Depth of the driver behind the outer face of the front, mm")
        @DecimalMin("10")
        @DecimalMax("1000")
        Double driverDepthMm,
    @Schema(description = "Density of the board, kg/m³; fibre board has about 750")
        @DecimalMin("100")
        @DecimalMax("3000")
        Double boardDensityKgPerM3) {

  public BoxPanelsRequest {
    driverDisplacementL = driverDisplacementL == null ? Double.valueOf(0) : driverDisplacementL;
    bracingL = bracingL == null ? Double.valueOf(0) : bracingL;
    portDisplacementL = portDisplacementL == null ? Double.valueOf(0) : portDisplacementL;
    boardDensityKgPerM3 = boardDensityKgPerM3 == null ? Double.valueOf(750) : boardDensityKgPerM3;
  }

  /** Which faces dimensions are taken between. */
  public enum Measured {
    /** Between the outer faces. */
    OUTSIDE,
    /** Between the inner faces. */
    INSIDE
  }

  /** Thickness of the front, mm. */
  double front() {
    return frontBoardMm == null ? boardMm : frontBoardMm;
  }
}
